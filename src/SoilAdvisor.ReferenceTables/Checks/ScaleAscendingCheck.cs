using SoilAdvisor.ReferenceTables.Guides;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>Classes ascend: each ends above its beginning and begins above the one before.</summary>
internal sealed class ScaleAscendingCheck : ITableCheck
{
    public string Code => "scale-ascending";

    public IEnumerable<TableProblem> Check(TableFolder folder) => folder.TablesOf(RowKinds.Ratings).SelectMany(ScaleRows.Of).SelectMany(Faults);

    private IEnumerable<TableProblem> Faults(ScaleRows scale)
    {
        foreach (var cec in ScaleJunction.CecsOf(scale))
        {
            decimal? before = null;
            foreach (var row in scale.Rows)
            {
                var (lower, upper) = (ScaleJunction.LimitOf(row, "lower", cec ?? 0), ScaleJunction.LimitOf(row, "upper", cec ?? 0));
                if (lower > upper || (lower == upper && (row["lower_included"], row["upper_included"]) is not ("yes", "yes")))
                {
                    yield return row.At("upper", Code, $"The class {row["class"]} ends at {row["upper"]}, not above its beginning, {row["lower"]}.");
                }
                if (lower <= before)
                {
                    yield return row.At("lower", Code, $"The class {row["class"]} does not begin above the class before it. Write the classes of a scale from low to high.");
                }
                before = lower ?? before;
            }
        }
    }
}
