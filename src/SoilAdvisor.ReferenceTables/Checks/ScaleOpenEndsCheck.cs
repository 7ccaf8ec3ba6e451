using SoilAdvisor.ReferenceTables.Guides;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>The first class is open below (or begins at a printed 0), the last is open above, and no other limit is open.</summary>
internal sealed class ScaleOpenEndsCheck : ITableCheck
{
    public string Code => "scale-open-ends";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
        folder.TablesOf(RowKinds.Ratings).SelectMany(ScaleRows.Of).Where(s => !s.IsInformation).SelectMany(Faults);

    private IEnumerable<TableProblem> Faults(ScaleRows scale)
    {
        if (scale.First.Number("lower") is not (null or 0) || scale.First["lower_per_cec"] is not null)
        {
            yield return scale.First.At("lower", Code, $"The first class {scale.First["class"]} begins at {scale.First["lower"]}; lower values have no class. Leave its lower limit empty.");
        }
        if (scale.Rows[^1]["upper"] is { } upper)
        {
            yield return scale.Rows[^1].At("upper", Code, $"The last class {scale.Rows[^1]["class"]} ends at {upper}; higher values have no class. Leave its upper limit empty.");
        }
        foreach (var row in scale.Rows.Skip(1).Where(r => r["lower"] is null))
        {
            yield return row.At("lower", Code, $"The class {row["class"]} is open below and is not the first of its scale.");
        }
        foreach (var row in scale.Rows.SkipLast(1).Where(r => r["upper"] is null))
        {
            yield return row.At("upper", Code, $"The class {row["class"]} is open above and is not the last of its scale.");
        }
    }
}
