using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.MethodConversions;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Planning;

/// <summary>A reading that was carried to another method by a named published line, rated there. An estimate: it never takes the place of the measured reading.</summary>
/// <param name="Reading">The reading by the other method.</param>
/// <param name="Guide">Guide that rates it, and why that one.</param>
/// <param name="Rating">Its rating.</param>
/// <param name="Certainty">How sure it is, with the line's own error added.</param>
public sealed record ConvertedRating(ReadingByAnotherMethod Reading, GuideSelection Guide, Rating Rating, Answer<RatingCertainty> Certainty)
{
    /// <summary>Converts and rates a reading: by the guide of the answer where that covers the other method, else by the nearest guide that does.</summary>
    /// <param name="test">The soil test.</param>
    /// <param name="conversion">The line that the user named.</param>
    /// <param name="chosen">The guide of the answer.</param>
    /// <param name="context">Crop and place.</param>
    /// <param name="region">ISO 3166-2 code; null when not said.</param>
    /// <param name="tables">The reference tables.</param>
    /// <param name="working">Receives the line and the look-up; null for none.</param>
    public static Answer<ConvertedRating> Of(
        SoilTest test, MethodConversion conversion, Guide chosen, RatingContext context, string? region, Tables tables, WorkingSheet? working) =>
        MethodConversionCalculation.Convert(test, conversion, working).Then(converted =>
        {
            var other = test with { Readings = [.. test.Readings.Select(r => r.Analyte == conversion.Analyte ? converted.Reading : r)] };
            var own = chosen.Rate(other, converted.Reading, context);
            var guide = own.IsGiven
                ? Answer<GuideSelection>.Given(new GuideSelection(chosen, "The guide of the answer covers this method too.", [], []))
                : GuideChoice.For([test with { Readings = [converted.Reading] }], null, region, context.CropGroup is { } crop ? [crop] : [], tables);
            return guide.Then(selected => selected.Guide.Rate(other, converted.Reading, context, working)
                .Select(rating => new ConvertedRating(converted, selected, rating, HowSure(test, converted, rating, tables.Variability, working))));
        });

    private static Answer<RatingCertainty> HowSure(SoilTest test, ReadingByAnotherMethod converted, Rating rating, Variability variability, WorkingSheet? working) =>
        ResultSpreads.Of(variability, converted.Original, converted.Original.Amount, test.Cores, working)
            .Then(spread => RatingCertainties.Of(rating, Widened(spread, converted), working));

    // Independent errors add as squares, those of a pH in pH units.
    private static ResultSpread Widened(ResultSpread spread, ReadingByAnotherMethod converted) => converted.PhSpread is { } ph
        ? spread with
        {
            PhUnits = PhSpread.FromPhUnits(Math.Sqrt((spread.PhUnits.PhUnits * spread.PhUnits.PhUnits) + (ph.PhUnits * ph.PhUnits))),
            Assumptions = [.. spread.Assumptions, converted.Assumptions[0]],
        }
        : spread.WidenedBy(converted.Spread!.Value, converted.Assumptions[0]);
}
