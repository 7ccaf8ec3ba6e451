namespace SoilAdvisor.ReferenceTables.Kinds;

/// <summary>The types a document may declare for a column.</summary>
internal static class ColumnType
{
    public const string Text = "text";
    public const string Number = "number";
    public const string Integer = "integer";
    public const string Id = "id";
    public const string YesNo = "yes-no";

    public static IReadOnlyList<string> All { get; } = [Text, Number, Integer, Id, YesNo];
}
