using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A property is written in a unit that belongs to it: a percentage is never pounds.</summary>
internal sealed class PropertyUnitCheck : ITableCheck
{
    public string Code => "unit-of-property";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
    [
        .. Faults(folder.RowsOf(RowKinds.CropValues), PropertyUnits.OfCrops),
        .. Faults(folder.RowsOf(RowKinds.MaterialValues), PropertyUnits.OfMaterials),
        .. Faults(folder.RowsOf(RowKinds.CoverCropValues), PropertyUnits.OfCoverCrops),
    ];

    private IEnumerable<TableProblem> Faults(IEnumerable<TableRow> rows, IReadOnlyDictionary<string, string[]> known) =>
        from row in rows
        where row["property"] is { } property && known.TryGetValue(property, out var units) && !units.Contains(row["unit"] ?? "")
        select row.At("unit", Code, $"\"{row["unit"]}\" is not a unit of {row["property"]}. Known: {string.Join(", ", known[row["property"]!].Select(u => u.Length == 0 ? "empty, for words" : u))}.");
}
