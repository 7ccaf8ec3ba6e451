using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>When a part of a rate is given: weeks come in pairs and in order, a day is a day of the year, and neither stands at a base dressing.</summary>
internal sealed class SplitTimeCheck : ITableCheck
{
    public string Code => "split-time";

    public IEnumerable<TableProblem> Check(TableFolder folder) => folder.RowsOf(RowKinds.Splits).SelectMany(Faults);

    private IEnumerable<TableProblem> Faults(TableRow row)
    {
        if ((row["weeks_from"] is null) != (row["weeks_to"] is null) || row.Number("weeks_from") > row.Number("weeks_to"))
        {
            yield return row.At("weeks_to", Code, "Write both weeks after planting, the first week first; one printed week stands in both cells.");
        }

        if (row["month_day"] is { } day && !DateOnly.TryParseExact($"2026-{day}", "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
        {
            yield return row.At("month_day", Code, $"\"{day}\" is not a day of the year. Write it like 06-15.");
        }

        if (row["timing"] == "base" && (row["weeks_from"] ?? row["month_day"]) is not null)
        {
            yield return row.At("timing", Code, "A base dressing is given before or at planting: weeks and days stand at side-dressings only.");
        }
    }
}
