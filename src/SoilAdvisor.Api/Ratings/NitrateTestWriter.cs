using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Lime;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Ratings;

/// <summary>Reads a soil test as a nitrate test and writes the advice out.</summary>
internal static class NitrateTestWriter
{
    private const int DigitsInWords = 3;

    /// <summary>The advice; null for a soil test that is no nitrate test, and after a refusal at its nitrate reading.</summary>
    /// <param name="test">The soil test.</param>
    /// <param name="crop">The crop; null when not named or not known.</param>
    /// <param name="request">As received.</param>
    /// <param name="calculation">Receives the refusal, the assumptions and the sources.</param>
    public static NitrateTestAnswer? Of(SoilTest test, Crop? crop, RatingsRequest request, Calculation calculation)
    {
        // A crop that is not known has been refused at its own place.
        if (!NitrateTest.IsMeantBy(test) || (crop is null && !string.IsNullOrWhiteSpace(request.Crop)))
        {
            return null;
        }

        var sheet = calculation.NewSheet();
        var reading = test.Of(Analyte.NitrateN)!;
        if (!NitrateTest.For(test, crop, request.Manured, calculation.Tables.SidedressTables, sheet).TryGet(out var advice, out var reason))
        {
            calculation.Faults.Add(reading.Where, reason);
            return null;
        }

        calculation.Assume(advice.Assumptions);
        return new NitrateTestAnswer(
            advice.Crop,
            request.Manured!.Value,
            RatingWriter.Write(reading),
            $"{advice.Span} mg/kg",
            Action(advice, crop!, request.Manured.Value, calculation.Units),
            RateAnswer.Of(advice.Rate, null, LimeEndpoints.Ground, calculation.Units),
            "The nitrogen credits of the book for cover crops, manure and organic matter. It sets the sidedressing only: what was given at planting stays as it was.",
            advice.Note,
            calculation.Assumptions(advice.Assumptions),
            WorkingWriter.Write(sheet?.Lines, calculation.Bibliography),
            calculation.Cite(advice.Source));
    }

    private static string Action(SidedressAdvice advice, Crop crop, bool manured, Units units)
    {
        var ground = $"{crop.Name}, {(manured ? "manured" : "unmanured")} soil";
        if (advice.Rate == default)
        {
            return $"Sidedress no nitrogen ({ground}): the table asks for none at this level, and it goes before the single level of a guide.";
        }

        var rate = units.PerArea(advice.Rate);
        return string.Create(CultureInfo.InvariantCulture, $"Sidedress {Units.Rounded((double)rate.Value, DigitsInWords)} {rate.Unit} of nitrogen ({ground}).");
    }
}
