using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A limit on a load stands by mass on an area, a limit on a content in mg/kg; each is above zero.</summary>
internal sealed class MetalUnitCheck : ITableCheck
{
    public string Code => "metal-unit";

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        foreach (var row in folder.RowsOf(RowKinds.MetalLimits))
        {
            var isLoad = row["kind"] is "cumulative" or "annual";
            if (row["unit"] is { } unit && isLoad == (unit == "mg/kg"))
            {
                yield return row.At("unit", Code, $"A limit that is {row["kind"]} cannot stand in {unit}.");
            }
            if (row.Number("value") is <= 0)
            {
                yield return row.At("value", Code, "A limit is above zero.");
            }
            if (row["years"] is not null && row["kind"] != "cumulative")
            {
                yield return row.At("years", Code, "Only a cumulative limit is spread over years.");
            }
        }
    }
}
