using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A publication comes into force before it is transcribed, and is transcribed before the transcript is checked.</summary>
internal sealed class DatesOrderedCheck : ITableCheck
{
    public string Code => "dates-ordered";

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        foreach (var (file, head) in folder.Heads)
        {
            HeadDate? before = null;
            foreach (var date in HeadDate.Of(head).Where(d => d.Date is not null))
            {
                if (date.Date < before?.Date)
                {
                    yield return file.At(date.Member, Code, $"\"{date.Words}\" is {date.Text}, before \"{before.Words}\", {before.Text}.");
                }
                before = date;
            }
        }
    }
}
