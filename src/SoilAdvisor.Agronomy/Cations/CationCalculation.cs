using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>
/// Exchange capacity by the sum of cations and the acidity of the laboratory's own buffer, and what fills it. Where the extract holds more
/// than the exchange (lime, salts, high pH) there is no answer.
/// </summary>
public static class CationCalculation
{
    private static readonly Analyte[] Needed = [Analyte.Ca, Analyte.Mg, Analyte.K];

    private static readonly Extractant[] Exchangeable = [Extractant.AmmoniumAcetate, Extractant.Mehlich3, Extractant.Mehlich1, Extractant.ModifiedMorgan];

    /// <summary>Whether a soil test was taken to look at cations: it holds calcium and magnesium. Of any other a refusal would only be noise.</summary>
    /// <param name="test">The soil test.</param>
    public static bool IsMeantFor(SoilTest test) => test.Of(Analyte.Ca) is not null && test.Of(Analyte.Mg) is not null;

    /// <summary>The balance of one soil test, or why there is none.</summary>
    /// <param name="test">The soil test.</param>
    /// <param name="rules">Published rules.</param>
    /// <param name="weights">Set of milliequivalent weights; null takes the first of the rules.</param>
    /// <param name="working">Receives the working; null for none. The numbers are the same.</param>
    public static Answer<CationBalance> For(SoilTest test, CationRules rules, MilliequivalentWeights? weights, WorkingSheet? working)
    {
        var question = new CationQuestion(test, rules, weights ?? rules.Weights[0], working);
        if ((CationGate.Of(question) ?? Missing(question)) is { } refusal)
        {
            return Answer<CationBalance>.Refused(refusal);
        }

        return Needed.All(c => test.Of(c)!.Unit is ReportingUnit.MilligramsPerCubicDecimetre or ReportingUnit.MilliequivalentsPer100CubicCentimetres)
            ? CationSum.Of(question, new VolumeBasis())
            : CationSum.Of(question, new MassBasis());
    }

    private static Refusal? Missing(CationQuestion question)
    {
        var missing = Needed.Where(c => question.Measured(c) is null).Select(Words.Analytes.IdOf).ToList();
        if (missing.Count > 0)
        {
            return new Refusal(
                "cations-missing",
                $"The exchange capacity is the sum of calcium, magnesium, potassium and acidity; {string.Join(", ", missing)} {(missing.Count == 1 ? "was" : "were")} not measured as a number.",
                "Ask the laboratory for the missing cations by the same extractant.");
        }

        var extractants = Needed.Select(c => question.Test.Of(c)!.Method.Extractant).Distinct().ToList();
        if (extractants is not [{ } extractant])
        {
            return new Refusal(
                "cation-extractants-mixed",
                "Calcium, magnesium and potassium were not all measured in one extract; their sum would be no exchange capacity.",
                "Ask the laboratory for all three by one extractant.");
        }

        return Exchangeable.Contains(extractant)
            ? null
            : new Refusal(
                "cation-extractant",
                $"{Words.Extractants.IdOf(extractant)} is not used to take out exchangeable cations; their sum would be no exchange capacity.",
                Invariant($"Ask the laboratory for the cations by {string.Join(" or ", Exchangeable.Select(Words.Extractants.IdOf))}."));
    }
}
