using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Cations;

/// <summary>Writes out what fills the exchange.</summary>
internal static class CationsWriter
{
    private const int Digits = 4;

    /// <summary>The balance or its refusal at the place of the soil test; null where the test was never meant for it.</summary>
    public static CationsAnswer? Write(Answer<CationBalance>? balance, string pointer, IReadOnlyList<WorkingLine>? working, Calculation calculation)
    {
        if (balance is not { } known)
        {
            return null;
        }

        return known.TryGet(out var given, out var reason)
            ? Write(given, working, calculation)
            : new CationsAnswer { Refused = Fault.Of(pointer, reason) };
    }

    private static CationsAnswer Write(CationBalance balance, IReadOnlyList<WorkingLine>? working, Calculation calculation) => new()
    {
        Capacity = new Quantity(Rounded(balance.Capacity), balance.Unit),
        Bases = new Quantity(Rounded(balance.Bases), balance.Unit),
        BaseSaturation = Rounded(balance.BaseSaturation.Percent),
        CalciumToMagnesium = balance.CalciumToMagnesium is { } ratio ? Rounded(ratio) : null,
        Parts = [.. balance.Cations.Select(c => Write(c, balance.References, calculation))],
        Acidity = new AcidityShareAnswer(Rounded(balance.Acidity.Milliequivalents), Rounded(balance.Acidity.Saturation.Percent), balance.Acidity.From, calculation.Cite(balance.Acidity.Source)),
        Weights = Write(balance.Weights, calculation),
        Warnings = balance.Warnings.Count > 0 ? [.. balance.Warnings.Select(w => new CationStatementAnswer(w.Code, w.Text, calculation.Cite(w.Source)))] : null,
        Trials = [.. balance.Trials.Select(t => new CationStatementAnswer(t.Id, t.Text, calculation.Cite(t.Source)))],
        Assumptions = balance.Assumptions.Count > 0 ? calculation.Assumptions(balance.Assumptions) : null,
        Working = WorkingWriter.Write(working, calculation.Bibliography),
    };

    private static CationShareAnswer Write(CationShare share, IReadOnlyList<ReferenceSaturation> references, Calculation calculation) => new(
        Words.Analytes.IdOf(share.Cation),
        Rounded(share.Milliequivalents),
        Rounded(share.Saturation.Percent),
        references.Any(r => r.Cation == share.Cation)
            ? [.. references.Where(r => r.Cation == share.Cation).Select(r => new ReferenceSaturationAnswer(r.Low, r.High, calculation.Cite(r.Source)))]
            : null);

    private static WeightsAnswer Write(MilliequivalentWeights weights, Calculation calculation) => new(
        weights.Id, weights.Title, Words.Units.IdOf(weights.Unit), weights.Calcium, weights.Magnesium, weights.Potassium, weights.Sodium, calculation.Cite(weights.Source));

    private static decimal Rounded(double value) => Units.Rounded(value, Digits);
}
