using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Lime by the Mehlich buffer: North Carolina, with its credit for lime of the past year, and the northeastern manual.</summary>
internal static class MehlichLime
{
    private const decimal LowestNortheastTarget = 6.5m;
    private const decimal HighestNortheastTarget = 7.0m;
    private const double MonthsOfCredit = 12;

    public static Answer<LimeRequirement> NorthCarolina(LimeQuestion question, LimeMethod method)
    {
        var reference = method.Parameter("reference-ph");
        if (question.Target.Value > reference.Value)
        {
            return LimeTargets.Outside(question, method, Invariant($"of at most {reference.Value}"));
        }

        return LimeByEquation.AcidityBy(question, method, LimeFormulas.AcidityMehlich).Select(acidity =>
        {
            var acidityFrom = Origin.Line(question.Working?.LastLine ?? 0);
            var (residual, residualFrom) = Residual(question, method);
            var rate = LimeFormulas.MehlichNorthCarolina.Of(
                (acidity, LimeByEquation.Ph(question.Target.Value), LimeByEquation.Ph(question.Ph), LimeByEquation.Ph(reference.Value), residual),
                question.Working,
                acidityFrom,
                question.TargetFrom,
                question.PhFrom,
                Origin.From(reference.Source),
                residualFrom);
            return question.AnswerOf(method, rate);
        });
    }

    public static Answer<LimeRequirement> Northeast(LimeQuestion question, LimeMethod method)
    {
        if (question.Target.Value is < LowestNortheastTarget or > HighestNortheastTarget)
        {
            return LimeTargets.Outside(question, method, Invariant($"of about {LowestNortheastTarget} to {HighestNortheastTarget}"));
        }

        return LimeByEquation.AcidityBy(question, method, LimeFormulas.AcidityMehlich).Select(acidity => question.AnswerOf(method, LimeFormulas.MehlichNortheast.Of(
            (method.Coefficient("square-coefficient"), method.Coefficient("linear-coefficient"), acidity, method.Coefficient("lime-per-acidity")),
            question.Working,
            method.From("square-coefficient"),
            method.From("linear-coefficient"),
            Origin.Line(question.Working?.LastLine ?? 0),
            method.From("lime-per-acidity"))));
    }

    private static (MassPerArea Residual, Origin From) Residual(LimeQuestion question, LimeMethod method)
    {
        if (question.Recent is not { } recent)
        {
            question.Assume("recent-lime", "No lime of the past year is taken off. If some was spread, list it.", method.Source);
            return (default, Origin.Given("no lime of the past year was named"));
        }

        if (question.Test.Sampled is not { } sampled)
        {
            question.Assume("recent-lime", "Lime of the past year was named, but not the day of sampling: nothing is taken off. Give the day.", method.Source);
            return (default, Origin.Given("the day of sampling is not known"));
        }

        var months = recent.MonthsUntil(sampled);
        if (months > MonthsOfCredit)
        {
            question.Assume("recent-lime", Invariant($"The lime was spread {months:0.#} months before sampling: it has reacted and the test shows it, so nothing is taken off."), method.Source);
            return (default, Origin.Given("the lime is older than a year"));
        }

        var soil = recent.SoilClass ?? (question.Test.SoilGroup == SoilGroup.Organic ? HumicSoilClass.Organic : HumicSoilClass.Mineral);
        if (recent.SoilClass is null)
        {
            question.Assume("lime-soil-class", $"The report's soil class is not given; the soil counts as {(soil == HumicSoilClass.Organic ? "organic (ORG)" : "mineral (MIN)")} for lime of the past year.", Citation.OurJudgement);
        }

        var loss = soil == HumicSoilClass.Mineral ? "residual-loss-mineral" : "residual-loss-organic";
        var residual = LimeFormulas.ResidualLime.Of(
            (recent.Amount, method.Coefficient(loss), new Coefficient(months)),
            question.Working,
            Origin.Given("lime spread"),
            method.From(loss),
            Origin.Given("days of spreading and sampling"));
        question.Assume(
            "recent-lime",
            Invariant($"{recent.Amount.PoundsPerAcre:0} lb/acre of lime was spread {months:0.#} months before sampling; {residual.PoundsPerAcre:0} lb/acre of it has not reacted yet and is taken off. That it reacts at an even pace is our reading of the page."),
            LimeFormulas.ResidualLime.Source);
        return (residual, Origin.Line(question.Working?.LastLine ?? 0));
    }
}
