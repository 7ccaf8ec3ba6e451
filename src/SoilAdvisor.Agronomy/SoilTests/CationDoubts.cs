using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>Cations that do not fit the exchange capacity printed beside them, or each other.</summary>
internal static class CationDoubts
{
    // Laboratories round weights and count sodium and acidity differently; beyond half as much again it is no longer that.
    private const decimal Fits = 1.5m;

    // Twofold is the step between mg/kg and lb/acre; a fifth either way allows for the same differences.
    private const decimal TwofoldFrom = 1.6m;
    private const decimal TwofoldTo = 2.4m;

    private static readonly Analyte[] Bases = [Analyte.Ca, Analyte.Mg, Analyte.K];

    /// <summary>The sum of cations against the printed exchange capacity.</summary>
    public static Suspicion? AgainstCapacity(SoilTest test, CationRules rules)
    {
        if (test.Of(Analyte.CationExchangeCapacity) is not { Amount: { Kind: AmountKind.Measured, Number: > 0 } printed } capacity || Sum(test, capacity.Unit) is not { } sum)
        {
            return null;
        }

        // Where the sum itself is not trusted it proves no mix-up either.
        var balance = CationCalculation.For(test, rules, null, null);
        if (!balance.IsGiven && balance.Reason.Code is "ph-above-cation-limit" or "free-lime-in-cations" or "saline-soil")
        {
            return null;
        }

        var whole = balance.IsGiven && balance.Value.Unit == Words.Units.IdOf(capacity.Unit) ? (decimal?)balance.Value.Capacity : null;
        Reading[] readings = [.. Bases.Select(b => test.Of(b)!), capacity];
        if (readings.Take(3).All(r => r.Unit == ReportingUnit.MilligramsPerKilogram) && sum >= TwofoldFrom * printed.Number && sum <= TwofoldTo * printed.Number)
        {
            return new Suspicion(
                "pounds-per-acre-read-as-ppm",
                Severity.Suspicion,
                readings,
                Invariant($"Calcium, magnesium and potassium alone come to {sum:0.#} {Words.Units.IdOf(capacity.Unit)}; the exchange capacity is printed as {printed}. Halved they would fit."),
                "Look whether the report is in lb/acre. If so, write lb/acre: phosphorus and the rest would be half as much in mg/kg.",
                Citation.OurJudgement);
        }

        if (whole is { } total && readings.Take(3).All(r => r.Unit == ReportingUnit.PoundsPerAcre) && printed.Number >= TwofoldFrom * total && printed.Number <= TwofoldTo * total)
        {
            return new Suspicion(
                "ppm-read-as-pounds-per-acre",
                Severity.Suspicion,
                readings,
                Invariant($"The cations come to {total:0.#} {Words.Units.IdOf(capacity.Unit)}; the exchange capacity is printed as {printed}. Doubled they would fit."),
                "Look whether the report is in ppm. If so, write mg/kg.",
                Citation.OurJudgement);
        }

        var isSummed = capacity.Method.Procedure != Procedure.Displacement;
        return sum > Fits * printed.Number || (isSummed && whole is { } all && (all > Fits * printed.Number || all * Fits < printed.Number))
            ? new Suspicion(
                "cec-far-from-cations",
                Severity.Suspicion,
                readings,
                Invariant($"The cations come to {whole ?? sum:0.#} {Words.Units.IdOf(capacity.Unit)}{(whole is null ? " without acidity" : "")}; the exchange capacity is printed as {printed}."),
                "Check the units of calcium, magnesium and potassium, and whether the exchange capacity belongs to this sample.",
                Citation.OurJudgement)
            : null;
    }

    /// <summary>Magnesium above calcium in the same unit, which few soils show and swapped columns do.</summary>
    public static Suspicion? MagnesiumAboveCalcium(SoilTest test) =>
        test.Of(Analyte.Ca) is { Amount.Kind: AmountKind.Measured } calcium
        && test.Of(Analyte.Mg) is { Amount.Kind: AmountKind.Measured } magnesium
        && calcium.Unit == magnesium.Unit
        && magnesium.Amount.Number > calcium.Amount.Number
            ? new Suspicion(
                "magnesium-above-calcium",
                Severity.Suspicion,
                [magnesium, calcium],
                Invariant($"Magnesium is {magnesium.Amount} and calcium {calcium.Amount} {Words.Units.IdOf(calcium.Unit)}. Few soils hold more magnesium than calcium."),
                "Check that the two columns are not swapped.",
                Citation.OurJudgement)
            : null;

    private static decimal? Sum(SoilTest test, ReportingUnit unit)
    {
        var sum = 0m;
        foreach (var cation in Bases)
        {
            if (test.Of(cation) is not { Amount.Kind: AmountKind.Measured } reading || !ReadingConversion.To(reading, unit, test.PoundsPerAcreFactor).TryGet(out var converted, out _))
            {
                return null;
            }

            sum += converted.Amount.Number;
        }

        return sum;
    }
}
