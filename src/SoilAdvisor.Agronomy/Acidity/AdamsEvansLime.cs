using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Lime by the Adams-Evans buffer, and by the Moore-Sikora buffer, which imitates it and takes the same equations.</summary>
internal static class AdamsEvansLime
{
    private const double PoundsInShortTon = 2000;

    public static string[] Parameters { get; } =
    [
        "acidity-coefficient", "buffer-start-ph", "lime-per-acidity", "efficiency-factor", "cec-limit", "rate-limit",
        "saturation-constant", "saturation-linear", "saturation-square",
    ];

    public static Answer<LimeRequirement> AdamsEvans(LimeQuestion question, LimeMethod method) => Of(question, method, LimeFormulas.AcidityAdamsEvans, LimeFormulas.AdamsEvans);

    public static Answer<LimeRequirement> MooreSikora(LimeQuestion question, LimeMethod method) => Of(question, method, CationFormulas.AcidityMooreSikora, LimeFormulas.MooreSikora);

    private static Answer<LimeRequirement> Of<TBuffer>(
        LimeQuestion question,
        LimeMethod method,
        Formula<(Coefficient PerUnit, BufferPh<TBuffer> Start, BufferPh<TBuffer> Buffer), BufferAcidity<TBuffer>> acidityFormula,
        Formula<(Coefficient PerAcidity, BufferAcidity<TBuffer> Acidity, Coefficient SaturationNow, Coefficient SaturationAtTarget, Coefficient Efficiency), MassPerArea> limeFormula)
        where TBuffer : IBuffer
    {
        var phRange = LimeFormulas.AcidSaturationAdamsEvans.Inputs[^1];
        if ((double)question.Ph < phRange.Min || (double)question.Target.Value > phRange.Max)
        {
            return LimeTargets.Outside(question, method, Invariant($"and a soil pH from {phRange.Min} to {phRange.Max}"));
        }

        return LimeByEquation.AcidityBy(question, method, acidityFormula).Then(acidity =>
        {
            var acidityFrom = Origin.Line(question.Working?.LastLine ?? 0);
            var now = Saturation(question, method, question.Ph, question.PhFrom);
            var nowFrom = Origin.Line(question.Working?.LastLine ?? 0);
            var atTarget = Saturation(question, method, question.Target.Value, question.TargetFrom);
            var rate = limeFormula.Of(
                (method.Coefficient("lime-per-acidity"), acidity, now, atTarget, method.Coefficient("efficiency-factor")),
                question.Working,
                method.From("lime-per-acidity"),
                acidityFrom,
                nowFrom,
                Origin.Line(question.Working?.LastLine ?? 0),
                method.From("efficiency-factor"));
            return Within(question, method, acidity.Value / now.Value, rate);
        });
    }

    private static Answer<LimeRequirement> Within(LimeQuestion question, LimeMethod method, double reckonedCec, MassPerArea rate)
    {
        var reported = question.Test.Of(Analyte.CationExchangeCapacity) is { Unit: ReportingUnit.MilliequivalentsPer100Grams, Amount: { Kind: AmountKind.Measured } amount } ? (double)amount.Number : reckonedCec;
        var largestCec = method.Parameter("cec-limit").Value;
        var largestRate = method.Parameter("rate-limit").Value;
        return reported >= (double)largestCec || rate.PoundsPerAcre >= (double)largestRate * PoundsInShortTon
            ? Answer<LimeRequirement>.Refused(
                "soil-outside-method",
                Invariant($"{method.Title} is meant for coarse soils with a cation exchange capacity below {largestCec} meq/100g and less than {largestRate} ton/acre of lime; this soil has {reported:0.#} meq/100g and would get {rate.PoundsPerAcre / PoundsInShortTon:0.##} ton/acre."),
                "Ask the laboratory for its lime rate, or for another buffer.")
            : Answer<LimeRequirement>.Given(question.AnswerOf(method, rate));
    }

    private static Coefficient Saturation(LimeQuestion question, LimeMethod method, decimal ph, Origin from) => LimeFormulas.AcidSaturationAdamsEvans.Of(
        (method.Coefficient("saturation-constant"), method.Coefficient("saturation-linear"), method.Coefficient("saturation-square"), LimeByEquation.Ph(ph)),
        question.Working,
        method.From("saturation-constant"),
        method.From("saturation-linear"),
        method.From("saturation-square"),
        from);
}
