using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>How much neutralising value a bed needs: the soil pH says whether, the named buffer says how much.</summary>
public static class LimeRequirementCalculation
{
    private const string NoneNeeded = "none-needed";

    private static readonly Length UsualDepth = Length.FromInches(6);

    /// <summary>
    /// The requirement as calcium carbonate equivalent. In this order: nothing at or above the target; a published method made for the
    /// buffer that the report names; the laboratory's own lime rate; else a refusal that says what to ask the laboratory.
    /// </summary>
    /// <param name="test">The soil test.</param>
    /// <param name="target">The target pH.</param>
    /// <param name="methods">Published methods.</param>
    /// <param name="asked">The method to use; null to choose by buffer, region and evidence.</param>
    /// <param name="region">ISO 3166-2 code of the farm; null when not known.</param>
    /// <param name="targetAssumptions">What was assumed in choosing the target; carried on.</param>
    /// <param name="working">Receives the working; null for none. The numbers are the same.</param>
    public static Answer<LimeRequirement> For(
        SoilTest test,
        TargetPh target,
        IEnumerable<LimeMethod> methods,
        LimeMethod? asked,
        string? region,
        IReadOnlyList<Assumption> targetAssumptions,
        WorkingSheet? working)
    {
        if (!WaterPh(test, target).TryGet(out var ph, out var refusal))
        {
            return Answer<LimeRequirement>.Refused(refusal);
        }

        var question = new LimeQuestion(test, target, ph.Value, ph.Where, working);
        question.Assumptions.AddRange(targetAssumptions);
        if (ph.Assumption is not null)
        {
            question.Assumptions.Add(ph.Assumption);
        }

        if (Unneeded(question) is { } none)
        {
            return Answer<LimeRequirement>.Given(none);
        }

        var byMethod = LimeMethodChoice.For(question, methods, asked, region).Then(m => ByMethod(question, m));
        return byMethod.IsGiven || LaboratoryLime.Of(question) is not { } laboratory
            ? byMethod
            : laboratory.Select(l => l with
            {
                Assumptions = [.. l.Assumptions, new Assumption("laboratory-lime-rate", $"The laboratory's own lime rate is used. {byMethod.Reason.Message}", Citation.CommonPractice)],
            });
    }

    /// <summary>The same requirement for another depth of working: in proportion.</summary>
    /// <param name="requirement">A requirement with the depth it is for.</param>
    /// <param name="depth">Depth worked; above zero.</param>
    /// <param name="working">Receives the line; null for none.</param>
    public static LimeRequirement ForDepth(LimeRequirement requirement, Length depth, WorkingSheet? working = null)
    {
        if (depth.Meters == requirement.Depth.Meters)
        {
            return requirement;
        }

        LimeFormulas.ForDepth.Of((requirement.Rate, requirement.Depth, depth), working, Origin.Line(working?.LastLine ?? 0), Origin.From(requirement.Source), Origin.Given("depth worked"));
        return requirement with { Lime = requirement.Lime.Times(depth / requirement.Depth), Depth = depth };
    }

    private static Answer<LimeRequirement> ByMethod(LimeQuestion question, LimeMethod method) => method.Kind == LimeMethodKind.Table
        ? LimeByTable.Of(question, method)
        : LimeByEquation.Of(question, method);

    private static LimeRequirement? Unneeded(LimeQuestion question)
    {
        var target = question.Target;
        if (question.Ph < target.Value && target.LimeBelow is { } limeBelow && question.Ph >= limeBelow)
        {
            question.Assume(
                "lime-only-below",
                Invariant($"pH {question.Ph} is below the target {target.Value}, but the source advises lime only below pH {limeBelow}."),
                target.Source);
        }
        else if (question.Ph < target.Value)
        {
            return null;
        }

        question.Working?.LookUp(
            "lime-needed",
            "Is lime needed?",
            question.Ph >= target.Value ? Invariant($"pH {question.Ph} ≥ target {target.Value}") : Invariant($"pH {question.Ph} ≥ {target.LimeBelow}, below which lime is advised"),
            [
                new WorkingInput("pH", "soil pH in water", (double)question.Ph, null, "pH", question.PhFrom),
                new WorkingInput("T", "target pH", (double)target.Value, null, "pH", question.TargetFrom),
            ],
            "no lime",
            target.Source);
        return question.Answer(NoneNeeded, LimeAmount.None, 0, "lb/acre", LimeBasis.Pure.Words, question.Test.Depth?.To ?? UsualDepth, target.Source);
    }

    private static Answer<(decimal Value, string Where, Assumption? Assumption)> WaterPh(SoilTest test, TargetPh target)
    {
        if (test.Of(Analyte.Ph) is not { Amount.Kind: not AmountKind.Missing } reading)
        {
            return Answer<(decimal, string, Assumption?)>.Refused("ph-missing", "The soil test has no pH, so nobody can say whether lime is needed.", "Ask the laboratory for the pH in water and the buffer pH with the buffer's name.");
        }

        if (reading.Method.Procedure is Procedure.PhCalciumChloride or Procedure.PhPotassiumChloride)
        {
            return Answer<(decimal, string, Assumption?)>.Refused("salt-ph", "The pH was measured in a salt solution, which reads lower than water; the target is a pH in water.", "Ask the laboratory for the pH in water.");
        }

        if (reading.Amount.Kind == AmountKind.Below || (reading.Amount.Kind == AmountKind.Above && reading.Amount.Number < target.Value))
        {
            return Answer<(decimal, string, Assumption?)>.Refused("ph-open", $"The pH is reported as {reading.Amount}; a lime requirement needs the number.", "Ask the laboratory for the measured pH.");
        }

        return Answer<(decimal, string, Assumption?)>.Given((
            reading.Amount.Number,
            reading.Where,
            reading.Method.Procedure is null ? new Assumption("ph-in-water", "The report does not say how pH was measured; it is taken as pH in water.", Citation.CommonPractice) : null));
    }
}
