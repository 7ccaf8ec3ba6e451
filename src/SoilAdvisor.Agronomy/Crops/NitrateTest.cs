using System.Globalization;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>From a pre-sidedress nitrate test to the nitrogen to sidedress.</summary>
public static class NitrateTest
{
    private static readonly Assumption InPlaceOfCredits = new(
        "nitrate-test-in-place-of-credits",
        "The nitrate test counts what cover crops, manure and organic matter have released so far: no credit is taken off beside it. It sets the sidedressing only.",
        Citation.CommonPractice);

    /// <summary>The advice for one crop; a refusal where no table is held for it, or where the test lacks nitrate-N, the timing or the layer.</summary>
    /// <param name="test">The soil test, with its timing and depth.</param>
    /// <param name="crop">The crop.</param>
    /// <param name="manured">Whether the soil was manured for this crop.</param>
    /// <param name="tables">The tables held.</param>
    /// <param name="working">Receives the look-up; null for none.</param>
    public static Answer<SidedressAdvice> For(SoilTest test, Crop crop, bool manured, IReadOnlyList<SidedressTable> tables, WorkingSheet? working = null)
    {
        if (tables.FirstOrDefault(t => t.Crop == crop.Id && t.Manured == manured) is not { } table)
        {
            return Answer<SidedressAdvice>.Refused(
                "no-sidedress-table",
                $"No table is held that turns a nitrate test into a rate for {crop.Name}.",
                $"Tables are held for {string.Join(", ", tables.Select(t => t.Crop).Distinct(StringComparer.Ordinal))}. Rate the test by a guide for its critical level instead.");
        }

        if (test.Of(Analyte.NitrateN) is not { Amount.Kind: not AmountKind.Missing } reading)
        {
            return Answer<SidedressAdvice>.Refused("not-reported", "NO3-N was not reported.", "Give nitrate-N (not nitrate) of the sample.");
        }

        if (!table.Scale.AppliesTo(test, default))
        {
            return Answer<SidedressAdvice>.Refused(WhyNotRated.For($"The sidedress table for {crop.Name}", [table.Scale], "NO3-N", test, default));
        }

        return ReadingConversion.To(reading, table.Scale.Unit, test.PoundsPerAcreFactor).Then(converted => Read(table, reading, converted, working));
    }

    // "Less than 10" is read at 10 and "more than 40" at 40: the end at which the rate is known.
    private static Answer<SidedressAdvice> Read(SidedressTable table, Reading reading, ConvertedReading converted, WorkingSheet? working)
    {
        var index = table.Scale.IndexOf(converted.Amount.Number, null);
        var span = table.Scale.Classes[index];
        var rate = table.Rates[index];
        working?.LookUp(
            "sidedress",
            "Nitrogen to sidedress",
            $"NO3-N {span.Name} {Words.Units.IdOf(table.Scale.Unit)}, {(table.Manured ? "manured" : "unmanured")} soil",
            [new WorkingInput("NO3-N", "pre-sidedress nitrate test", null, converted.Amount.ToString(), Words.Units.IdOf(table.Scale.Unit), Origin.Given(reading.Where))],
            string.Create(CultureInfo.InvariantCulture, $"{rate.PoundsPerAcre:0.#} lb N/acre"),
            span.Source);
        return Answer<SidedressAdvice>.Given(new SidedressAdvice(table.Crop, converted.Amount, span.Name, rate, table.Note, [InPlaceOfCredits, .. converted.Assumptions], span.Source));
    }
}
