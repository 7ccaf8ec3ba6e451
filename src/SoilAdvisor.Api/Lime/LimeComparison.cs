using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Planning;

namespace SoilAdvisor.Api.Lime;

/// <summary>Several lime methods side by side on one soil: how far they differ is part of the answer.</summary>
internal static class LimeComparison
{
    private const string All = "all";

    /// <summary>The methods asked for; "all" stands for each made for the buffer of the report.</summary>
    public static IReadOnlyList<LimeMethod> Read(IReadOnlyList<string>? ids, SoilTest? test, Calculation calculation)
    {
        if (IsAll(ids))
        {
            var buffer = test?.Of(Analyte.BufferPh)?.Method.Procedure;
            return [.. calculation.Tables.LimeMethods.Values.Where(m => buffer is { } named && m.Buffers.Contains(named))];
        }

        return
        [
            .. (ids ?? [])
                .Take(Limits.PerBed)
                .Select((id, i) => Named.Read(id, PointerPath.Down("/methods", i), calculation.Tables.LimeMethod, calculation.Faults))
                .OfType<LimeMethod>()
                .DistinctBy(m => m.Id),
        ];
    }

    /// <summary>True where every method made for the buffer is asked for.</summary>
    public static bool IsAll(IReadOnlyList<string>? ids) => ids is [All];

    public static ComparedMethodAnswer Of(LimeMethod method, LimeAsked asked, Calculation calculation)
    {
        var answer = LimeWalk.Requirement(asked with { Method = method }, calculation.Tables, null);
        // Where the laboratory's own rate stands in for a method that does not fit, that is not this method's answer.
        var own = answer.IsGiven && answer.Value.Method is { } used && used != method.Id && !answer.Value.Lime.IsZero ? null : answer.IsGiven ? answer.Value : null;
        return new ComparedMethodAnswer(
            method.Id,
            method.Title,
            method.Institution,
            method.Regions,
            method.Basis.Words,
            own is null ? null : LimeWriter.Write(own, asked.Area, LimeEndpoints.Ground, calculation),
            own is not null ? null : Refused(answer, method),
            calculation.Cite(method.Source));
    }

    /// <summary>How far states differ, as a publication found it.</summary>
    public static LimeStatementAnswer? Spread(Calculation calculation) =>
        calculation.Tables.Liming.FigureOf("state-recommendations", "coefficient-of-variation") is { Low: { } low, High: { } high } figure
            ? new LimeStatementAnswer(
                string.Create(CultureInfo.InvariantCulture, $"States differ widely on the same soil: 40 recommendations of 34 states for six soils varied by {low} to {high} % (coefficient of variation). Read the amount with its method and region, and never average two."),
                calculation.Cite(figure.Source))
            : null;

    private static Fault Refused(Answer<LimeRequirement> answer, LimeMethod method) => answer.IsGiven
        ? new Fault("/soilTest", "buffer-mismatch", $"{method.Title} does not fit the report.", "Choose a method made for the buffer of the report.")
        : new Fault("/soilTest", answer.Reason.Code, answer.Reason.Message, answer.Reason.Suggestion);
}
