using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A unit is one that the program can convert.</summary>
internal sealed class UnitKnownCheck : ITableCheck
{
    private static readonly string[] DepthUnits = ["in", "cm"];

    public string Code => "unit-known";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
    [
        .. from cell in TableCell.Of(folder)
           where cell is { Column: "unit", Text: not null, Kind.Words: not null } && !cell.Kind.Words.Contains(cell.Text)
           select cell.Fault(Code, Say(cell.Text!, cell.Kind!.Words!)),
        .. from table in folder.Tables
           where table.IndexOf("unit") >= 0
           from row in table.Rows
           where row["unit"] is null && (row["value"] ?? row["low"] ?? row["high"]) is not null
           select row.At("unit", Code, "A number stands here without a unit. Write the unit as printed."),
        .. folder.LimeMethods.Where(d => !LimeRateUnits.Ids.Contains(d.Value.Unit)).Select(d => d.At("unit", Code, Say(d.Value.Unit, LimeRateUnits.Ids))),
        .. folder.LimeMethods.Where(d => !DepthUnits.Contains(d.Value.Depth.Unit)).Select(d => d.At("depth.unit", Code, Say(d.Value.Depth.Unit, DepthUnits))),
    ];

    private static string Say(string unit, IReadOnlyCollection<string> known) => $"\"{unit}\" is not a known unit here. Known: {string.Join(", ", known)}.";
}
