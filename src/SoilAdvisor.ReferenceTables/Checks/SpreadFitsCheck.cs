using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A spread that is calculated with names its analyte and a figure, in a measure and unit that fit it.</summary>
internal sealed class SpreadFitsCheck : ITableCheck
{
    public string Code => "spread-fits";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
        from row in folder.RowsOf(RowKinds.Variability)
        from fault in Faults(row)
        select fault;

    private IEnumerable<TableProblem> Faults(TableRow row)
    {
        var isPh = row["analyte"] is "pH" or "bufferPh";
        if (row["measure"] == "cv" && row["unit"] is { } unit && unit != "%")
        {
            yield return row.At("unit", Code, $"A coefficient of variation stands in %, not in {unit}.");
        }

        if (isPh && row["measure"] == "cv")
        {
            yield return row.At("measure", Code, "pH spreads by a standard deviation in pH units (sd): a percentage of a pH means nothing.");
        }

        if (isPh && row["measure"] != "cv" && row["unit"] is not (null or "pH"))
        {
            yield return row.At("unit", Code, $"The spread of a pH stands in pH units (pH), not in {row["unit"]}.");
        }

        if (!isPh && row["measure"] == "sd" && row["unit"] is not (null or "%"))
        {
            yield return row.At("unit", Code, "A standard deviation stands in percentage points (%) or pH units: in any other unit it would depend on the unit of the result. Write a coefficient of variation (cv).");
        }

        if (row["used_for"] is null or "information")
        {
            yield break;
        }

        if (row["analyte"] is null)
        {
            yield return row.At("analyte", Code, $"A row used for {row["used_for"]} names its analyte. Only information may stand for soil tests in general.");
        }

        if (row["used_for"] == "two-seasons")
        {
            if (row["measure"] != "change" || row["low"] is null || row["high"] is null)
            {
                yield return row.At("measure", Code, "A swing between seasons is a change with a low and a high end.");
            }
        }
        else if (row["measure"] == "change" || row.Number("value") is not > 0)
        {
            yield return row.At("value", Code, $"A row used for {row["used_for"]} needs a figure above 0, as a coefficient of variation (cv) or a standard deviation (sd).");
        }
    }
}
