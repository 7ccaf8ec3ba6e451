using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.ReferenceTables.Guides;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>What ties a scale to a sample can be read and met: spans of other values, timing, and a layer with both ends.</summary>
internal sealed class ScaleConditionsCheck : ITableCheck
{
    public string Code => "scale-conditions";

    public IEnumerable<TableProblem> Check(TableFolder folder) => folder.RowsOf(RowKinds.Ratings).SelectMany(Faults);

    private IEnumerable<TableProblem> Faults(TableRow row)
    {
        var cell = ConditionCell.Of(row);
        foreach (var fault in cell.Faults)
        {
            yield return row.At(ConditionCell.Column, Code, fault);
        }
        foreach (var condition in cell.Conditions)
        {
            var analyte = Words.Analytes.IdOf(condition.Analyte);
            if (analyte == row["analyte"])
            {
                yield return row.At(ConditionCell.Column, Code, $"The limits of {analyte} cannot depend on {analyte} itself.");
            }
            else if (Words.ProceduresOf(condition.Analyte) is null && condition.Analyte != Analyte.Acidity && row["extractant"] is null)
            {
                yield return row.At(ConditionCell.Column, Code, $"A condition on {analyte} counts by the scale's own extractant, and this scale has none.");
            }
        }
        if ((row["depth_from"] is null) != (row["depth_to"] is null))
        {
            yield return row.At("depth_to", Code, "A layer has a top and a bottom. Write both, in inches, or neither.");
        }
    }
}
