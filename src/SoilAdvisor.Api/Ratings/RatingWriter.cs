using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.SoilTests;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Ratings;

/// <summary>Writes ratings out.</summary>
internal static class RatingWriter
{
    public static RatingAnswer Write(Rating rating, Answer<RatingCertainty>? certainty, IReadOnlyList<WorkingLine>? working, Calculation calculation) => new(
        Words.Analytes.IdOf(rating.Analyte),
        Write(rating.Reading),
        rating.Class.Name,
        WordOf(rating.Standing),
        CertaintyWriter.Words(certainty),
        CertaintyWriter.Probabilities(certainty),
        CertaintyWriter.Likely(rating, certainty),
        Write(rating.Scale, rating),
        Assumptions(rating, certainty) is { Count: > 0 } assumptions ? calculation.Assumptions(assumptions) : null,
        WorkingWriter.Write(working, calculation.Bibliography),
        calculation.Cite(rating.Source));

    public static string WordOf(Standing standing) => standing switch
    {
        Standing.Below => "below",
        Standing.Target => "target",
        Standing.Above => "above",
        Standing.Stop => "stop",
        _ => "information",
    };

    /// <summary>What the class and its probability rest on.</summary>
    public static IReadOnlyList<Assumption> Assumptions(Rating rating, Answer<RatingCertainty>? certainty) =>
        [.. rating.Assumptions, .. certainty is { IsGiven: true } known ? known.Value.Assumptions : []];

    public static ReadingAnswer Write(Reading reading) => new(
        reading.Amount.Number,
        SoilTestWriter.ComparatorOf(reading.Amount),
        Words.Units.IdOf(reading.Unit),
        reading.Method.Extractant is { } extractant ? Words.Extractants.IdOf(extractant) : null,
        reading.Method.Detection is { } detection ? Words.Detections.IdOf(detection) : null,
        reading.Method.Basis == Basis.Oxide ? Words.Bases.IdOf(Basis.Oxide) : null,
        reading.Method.Procedure is { } procedure ? Words.ProceduresOf(reading.Analyte)?.IdOf(procedure) : null);

    public static ScaleAnswer Write(RatingScale scale, Rating rating) => new(
        Words.Units.IdOf(scale.Unit),
        scale.Method.ToString(),
        scale.CropGroup,
        rating.Cec,
        Units.Rounded((double)rating.Amount.Number),
        TargetRange.Of(rating) is { } target ? new TargetAnswer(target.Lower, target.Upper) : null,
        [.. scale.Classes.Select((c, i) => new ScaleClassAnswer(
            c.Name,
            WordOf(c.Standing),
            c.StandingIsOurs,
            scale.LowerOf(i, rating.Cec),
            c.Lower is null ? null : c.LowerIncluded,
            scale.UpperOf(i, rating.Cec),
            c.Upper is null ? null : c.UpperIncluded))]);
}
