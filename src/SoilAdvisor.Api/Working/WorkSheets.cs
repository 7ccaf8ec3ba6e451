using System.Text;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Reports;

namespace SoilAdvisor.Api.Working;

/// <summary>In place of an answer: the steps that lead to it, with blanks for a learner to fill in.</summary>
internal static class WorkSheets
{
    private const string Json = "application/json";
    private const string Html = "text/html";
    private const string Markdown = "text/markdown";

    public static IResult Write(HttpRequest request, Calculation calculation)
    {
        var parts = calculation.Sheets
            .Select(s => (s.About, Lines: (IReadOnlyList<WorkingLine>)[.. s.Lines.Where(l => l.IsByHand).Select(l => l.WithoutAnswers())]))
            .Where(s => s.Lines.Count > 0)
            .ToList();
        return MediaChoice.Of(request, [Json, Html, Markdown]) switch
        {
            Html => TypedResults.Content(WorkSheetReport.Html(parts, calculation.Tables.Sources), Html, Encoding.UTF8),
            Markdown => TypedResults.Content(WorkSheetReport.Markdown(parts, calculation.Tables.Sources), Markdown, Encoding.UTF8),
            _ => TypedResults.Json(Answer(parts, calculation), ApiJson.TypeOf<WorkSheetAnswer>()),
        };
    }

    private static WorkSheetAnswer Answer(IReadOnlyList<(string About, IReadOnlyList<WorkingLine> Lines)> parts, Calculation calculation)
    {
        // Only what stands on the sheet is cited: the answer's other sources would tell where it was found.
        var bibliography = new Bibliography(calculation.Tables);
        return new WorkSheetAnswer(
            [.. parts.Select(p => new WorkSheetPartAnswer(p.About.Length > 0 ? p.About : null, WorkingWriter.Write(p.Lines, bibliography)!))],
            [],
            bibliography.List(),
            calculation.Versions());
    }
}
