namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>What a document declares of a column.</summary>
/// <param name="Type">text, number, integer, id or yes-no.</param>
/// <param name="Unit">Unit of its numbers, in words.</param>
/// <param name="Min">Lowest number allowed.</param>
/// <param name="Max">Highest number allowed.</param>
/// <param name="OneOf">The words allowed.</param>
/// <param name="Optional">Whether a cell may be empty.</param>
internal sealed record ColumnSpecification(
    string Type,
    string? Unit = null,
    decimal? Min = null,
    decimal? Max = null,
    IReadOnlyList<string>? OneOf = null,
    bool Optional = false);
