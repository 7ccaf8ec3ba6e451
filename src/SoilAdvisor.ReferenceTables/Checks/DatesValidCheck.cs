using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>Dates are calendar dates, written year-month-day; of a publication the year or the month is enough.</summary>
internal sealed class DatesValidCheck : ITableCheck
{
    public string Code => "dates-valid";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
        from head in folder.Heads
        from date in HeadDate.Of(head.Head)
        where date is { Text: not null, Date: null }
        select head.File.At(date.Member, Code, $"\"{date.Text}\" is not a date. Write it as 2026-11-24; what a publication prints of its date may be 2026 or 2026-11.");
}
