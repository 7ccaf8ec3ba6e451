using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Lime by a single addition of calcium hydroxide, Georgia: the lime buffer capacity times the rise in pH.</summary>
internal static class SingleAdditionLime
{
    public static Answer<LimeRequirement> Of(LimeQuestion question, LimeMethod method)
    {
        // The titration is linear up to the highest target that the method names.
        if (question.Target.Value > method.Targets[^1])
        {
            return LimeTargets.Outside(question, method, Invariant($"of at most {method.Targets[^1]}, the end of the straight part of the titration"));
        }

        var reading = question.Test.Of(Analyte.LimeBufferCapacity)!;
        var measured = (double)reading.Amount.Number;
        var from = Origin.Given(reading.Where);
        var capacity = new LimeBufferCapacity(measured);
        if (reading.Method.Procedure == Procedure.CapacityThirtyMinutes)
        {
            capacity = LimeFormulas.EquilibriumCapacity.Of(
                (new Coefficient(measured), method.Coefficient("equilibrium-linear"), method.Coefficient("equilibrium-square")),
                question.Working,
                from,
                method.From("equilibrium-linear"),
                method.From("equilibrium-square"));
            from = Origin.Line(question.Working?.LastLine ?? 0);
        }

        return Answer<LimeRequirement>.Given(question.AnswerOf(method, LimeFormulas.SingleAddition.Of(
            (capacity, LimeByEquation.Ph(question.Target.Value), LimeByEquation.Ph(question.Ph), method.Coefficient("lime-per-capacity")),
            question.Working,
            from,
            question.TargetFrom,
            question.PhFrom,
            method.From("lime-per-capacity"))));
    }
}
