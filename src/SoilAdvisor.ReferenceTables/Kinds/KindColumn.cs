namespace SoilAdvisor.ReferenceTables.Kinds;

/// <summary>A column that a kind of table has.</summary>
/// <param name="Name">Its name in the header.</param>
/// <param name="Type">Its type; a document may declare the stricter id for text and integer for number.</param>
/// <param name="Optional">Whether the meaning allows an empty cell; a document may be stricter.</param>
/// <param name="Words">The only words allowed; null for any.</param>
internal sealed record KindColumn(string Name, string Type, bool Optional, IReadOnlyCollection<string>? Words)
{
    public bool Accepts(string declared) =>
        declared == Type
        || (Type == ColumnType.Text && declared == ColumnType.Id)
        || (Type == ColumnType.Number && declared == ColumnType.Integer);
}
