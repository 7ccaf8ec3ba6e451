using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>Release with time never falls, and every course that a material names is written.</summary>
internal sealed class TimeCourseCheck : ITableCheck
{
    public string Code => "time-course";

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        var rows = folder.RowsOf(RowKinds.TimeCourse).ToList();
        foreach (var course in rows.GroupBy(r => (r["course"], r["material"], r["temperature"])))
        {
            var ordered = course.OrderBy(r => r.Number("days")).ToList();
            foreach (var (later, earlier) in ordered.Skip(1).Zip(ordered).Where(p => p.First.Number("low") < p.Second.Number("low") || p.First.Number("high") < p.Second.Number("high")))
            {
                yield return later.At("low", Code, $"Less is released than after {earlier["days"]} days. Release never falls with time.");
            }
        }

        var known = rows.Select(r => r["course"]).ToHashSet(StringComparer.Ordinal);
        foreach (var row in folder.RowsOf(RowKinds.MaterialClasses).Where(r => r["course"] is not null && !known.Contains(r["course"])))
        {
            yield return row.At("course", Code, $"The course \"{row["course"]}\" is not written in nitrogen-release/time-course.csv.");
        }
    }
}
