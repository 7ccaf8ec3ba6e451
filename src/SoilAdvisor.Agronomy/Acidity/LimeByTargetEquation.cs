using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>
/// A requirement by the equation that a method prints for one target pH. A target between two printed ones takes the lower: never limed past
/// the target. Below all of them there is no answer.
/// </summary>
internal static class LimeByTargetEquation
{
    public static Answer<LimeRequirement> Of(LimeQuestion question, LimeMethod method)
    {
        var targets = method.Equations.Select(e => e.TargetPh).Order().ToList();
        if (LimeTargets.Printed(question, method, targets) is not { } target)
        {
            return LimeTargets.Outside(question, method, targets);
        }

        if (question.Ph >= target)
        {
            return Answer<LimeRequirement>.Given(question.AnswerOf(method, default));
        }

        var equation = method.Equations.First(e => e.TargetPh == target);
        var buffer = method.Reads == LimeReads.BufferPh ? question.Test.Of(Analyte.BufferPh) : null;
        var coefficients = Origin.From(equation.Source);
        var printed = LimeFormulas.ByTargetEquation.Of(
            (
                new Coefficient((double)equation.Constant),
                new Coefficient((double)equation.PerBuffer),
                new Coefficient((double)equation.PerBufferSquare),
                new Coefficient((double)equation.PerPh),
                new Coefficient(buffer is null ? 0 : (double)buffer.Amount.Number),
                new SoilPh((double)question.Ph),
                method.One),
            question.Working,
            coefficients,
            coefficients,
            coefficients,
            coefficients,
            buffer is null ? Origin.Given("no buffer is read") : Origin.Given(buffer.Where),
            question.PhFrom,
            Origin.From(Citation.UnitDefinitions));
        if (printed.IsZero)
        {
            question.Assume("lime-equation-zero", Invariant($"The equation of {method.Title} for pH {target} comes to nothing or less here: no lime."), method.Source);
        }

        return Answer<LimeRequirement>.Given(question.AnswerOf(method, printed));
    }
}
