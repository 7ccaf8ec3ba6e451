using System.Globalization;
using SoilAdvisor.Agronomy.Quantities;
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

    /// <summary>Whether a soil test asks to be read so: it was taken before sidedressing and holds nitrate-N.</summary>
    /// <param name="test">The soil test.</param>
    public static bool IsMeantBy(SoilTest test) => test.Timing == SampleTiming.BeforeSidedressing && test.Of(Analyte.NitrateN) is not null;

    /// <summary>The advice for one crop; a refusal where no table is held for it, or where the crop, the manuring, nitrate-N, the timing or the layer is not stated.</summary>
    /// <param name="test">The soil test, with its timing and depth.</param>
    /// <param name="crop">The crop; null when not said.</param>
    /// <param name="manured">Whether the soil was manured for this crop; null when not said.</param>
    /// <param name="tables">The tables held.</param>
    /// <param name="working">Receives the look-up; null for none.</param>
    public static Answer<SidedressAdvice> For(SoilTest test, Crop? crop, bool? manured, IReadOnlyList<SidedressTable> tables, WorkingSheet? working = null)
    {
        if (crop is null)
        {
            return Answer<SidedressAdvice>.Refused("crop-missing", "A nitrate test is read for one crop, and none is named.", "Name the crop that is to be sidedressed.");
        }

        if (manured is null && tables.Any(t => t.Crop == crop.Id))
        {
            return Answer<SidedressAdvice>.Refused(
                "manured-missing",
                $"The sidedress table for {crop.Name} has one part for manured soil and one for unmanured, and their rates differ.",
                "Say whether the soil was manured for this crop: manured yes or no (true or false in JSON).");
        }

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

    // "Less than 10" is read at 10 and "more than 40" at 40: the end that was measured.
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
        return Answer<SidedressAdvice>.Given(new SidedressAdvice(table.Crop, converted.Amount, span.Name, rate, table.Note, [InPlaceOfCredits, .. Assumptions(table, converted, rate)], span.Source));
    }

    private static IEnumerable<Assumption> Assumptions(SidedressTable table, ConvertedReading converted, MassPerArea rate)
    {
        foreach (var assumption in converted.Assumptions)
        {
            yield return assumption;
        }

        var amount = converted.Amount;
        if (Math.Round(amount.Number, MidpointRounding.AwayFromZero) is var whole && whole != amount.Number)
        {
            yield return new Assumption(
                "rounded-to-printed-bins",
                string.Create(CultureInfo.InvariantCulture, $"The sidedress table prints whole steps; NO3-N {amount.Number} {Words.Units.IdOf(table.Scale.Unit)} is rounded to {whole} before it is looked up."),
                Citation.CommonPractice);
        }

        // Rates only fall as nitrate rises: the first is the highest, the last the lowest.
        if ((amount.Kind == AmountKind.Below && table.Rates[0] > rate) || (amount.Kind == AmountKind.Above && table.Rates[^1] < rate))
        {
            yield return new Assumption(
                "open-result",
                string.Create(CultureInfo.InvariantCulture, $"NO3-N was reported as {amount} {Words.Units.IdOf(table.Scale.Unit)}; the rate is that of {amount.Number} and may have to be {(amount.Kind == AmountKind.Below ? "higher" : "lower")}. Ask the laboratory for the number."),
                Citation.OurJudgement);
        }
    }
}
