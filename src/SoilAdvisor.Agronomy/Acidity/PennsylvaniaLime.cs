using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Lime by exchangeable acidity, Pennsylvania.</summary>
internal static class PennsylvaniaLime
{
    private static readonly decimal[] Targets = [6.5m, 7.0m];

    public static Answer<LimeRequirement> Of(LimeQuestion question, LimeMethod method)
    {
        if (!LimeReading.AcidityOf(question, method).TryGet(out var reading, out var refusal))
        {
            return Answer<LimeRequirement>.Refused(refusal);
        }

        if (LimeTargets.Printed(question, method, Targets) is not { } target)
        {
            return LimeTargets.Outside(question, method, Targets);
        }

        if (question.Ph >= target)
        {
            return Answer<LimeRequirement>.Given(question.AnswerOf(method, default));
        }

        var acidity = ExchangeableAcidity.FromMilliequivalentsPer100Grams((double)reading.Amount.Number);
        return Answer<LimeRequirement>.Given(question.AnswerOf(method, target == Targets[0] ? To65(question, method, reading, acidity) : To70(question, method, reading, acidity)));
    }

    private static MassPerArea To65(LimeQuestion question, LimeMethod method, Reading reading, ExchangeableAcidity acidity)
    {
        var limit = method.Parameter("acidity-limit").Value;
        if (reading.Amount.Number == limit)
        {
            question.Assume("acidity-at-limit", Invariant($"The publication does not define exactly {limit} meq/100g; the smaller rate is used."), Citation.OurJudgement);
        }

        return LimeFormulas.ModifiedMehlichPennsylvania.Of(
            (method.Coefficient("rate-per-acidity-target-6-5"), ExchangeableAcidity.FromMilliequivalentsPer100Grams((double)limit), MassPerArea.FromPoundsPerAcre(method.Coefficient("fixed-rate-target-6-5").Value), acidity),
            question.Working,
            method.From("rate-per-acidity-target-6-5"),
            method.From("acidity-limit"),
            method.From("fixed-rate-target-6-5"),
            Origin.Given(reading.Where));
    }

    private static MassPerArea To70(LimeQuestion question, LimeMethod method, Reading reading, ExchangeableAcidity acidity) => LimeFormulas.ModifiedMehlichPennsylvaniaTo70.Of(
        (method.Coefficient("rate-per-acidity-target-7-0"), acidity),
        question.Working,
        method.From("rate-per-acidity-target-7-0"),
        Origin.Given(reading.Where));
}
