using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>The few extremes that a publication calls worth attention. Everything between them is left alone.</summary>
internal static class CationExtremes
{
    public static IReadOnlyList<CationWarning> Of(CationQuestion question, IReadOnlyList<CationShare> shares) =>
        [.. new[] { MagnesiumOverCalcium(question, shares), Low(question, Analyte.Ca), Low(question, Analyte.Mg) }.OfType<CationWarning>()];

    private static CationWarning? MagnesiumOverCalcium(CationQuestion question, IReadOnlyList<CationShare> shares)
    {
        var (calcium, magnesium) = (shares[0], shares[1]);
        var limit = question.Rules.Limits.MagnesiumNotBelowCalcium;
        return magnesium.Milliequivalents > 0 && magnesium.Milliequivalents >= (double)limit.Value * calcium.Milliequivalents
            ? new CationWarning(
                "magnesium-not-below-calcium",
                Invariant($"Magnesium fills {magnesium.Saturation.Percent:0} % of the exchange and calcium {calcium.Saturation.Percent:0} %. Only where magnesium equals or exceeds calcium does the source see a reason to add calcium for the ratio."),
                limit.Source)
            : null;
    }

    private static CationWarning? Low(CationQuestion question, Analyte cation)
    {
        var (limit, code, name) = cation == Analyte.Ca
            ? (question.Rules.Limits.LowCalcium, "calcium-low", "Calcium")
            : (question.Rules.Limits.LowMagnesium, "magnesium-low", "Magnesium");
        // By volume of soil there is no mg/kg to hold against the limit, and the answer is a refusal.
        return ReadingConversion.To(question.Test.Of(cation)!, ReportingUnit.MilligramsPerKilogram, question.Test.PoundsPerAcreFactor) is { IsGiven: true } converted
            && converted.Value.Amount.Number < limit.Value
            ? new CationWarning(code, Invariant($"{name} is {converted.Value.Amount.Number:0.#} mg/kg; the source calls less than {limit.Value} mg/kg low, whatever the ratio."), limit.Source)
            : null;
    }
}
