using SoilAdvisor.Agronomy.Quantities;
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
    /// The requirement. In this order: nothing at or above the target; the method asked for; a published method made for what the report
    /// holds, those that were read before those recalled; the laboratory's own lime rate; a table of texture and pH, said to be rough; else a
    /// refusal that says what to ask the laboratory.
    /// </summary>
    /// <param name="test">The soil test.</param>
    /// <param name="target">The target pH.</param>
    /// <param name="methods">Published methods.</param>
    /// <param name="asked">The method to use; null to choose by buffer, evidence and region.</param>
    /// <param name="region">ISO 3166-2 code of the farm; null when not known.</param>
    /// <param name="targetAssumptions">What was assumed in choosing the target; carried on.</param>
    /// <param name="working">Receives the working; null for none. The numbers are the same.</param>
    /// <param name="recentLime">Lime of the past year; null when none was named.</param>
    public static Answer<LimeRequirement> For(
        SoilTest test,
        TargetPh target,
        IEnumerable<LimeMethod> methods,
        LimeMethod? asked,
        string? region,
        IReadOnlyList<Assumption> targetAssumptions,
        WorkingSheet? working,
        RecentLime? recentLime = null)
    {
        if (!PhScales.InWater(test, region, working).TryGet(out var ph, out var refusal))
        {
            return Answer<LimeRequirement>.Refused(refusal);
        }

        var question = new LimeQuestion(test, target, ph, region, recentLime, [.. targetAssumptions, .. ph.Assumptions], working);
        if (Unneeded(question) is { } none)
        {
            return Answer<LimeRequirement>.Given(none);
        }

        var known = methods.ToList();
        var byMethod = asked is not null ? By(question.Again(), asked) : Best(question, known);
        return byMethod.IsGiven ? byMethod : Fallback(question, known, byMethod.Reason, asked is null && test.Of(Analyte.BufferPh) is not { Amount.Kind: not AmountKind.Missing });
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

        LimeFormulas.ForDepth.Of((requirement.Lime.AsPureLime, requirement.Depth, depth), working, Origin.Line(working?.LastLine ?? 0), Origin.From(requirement.Source), Origin.Given("depth worked"));
        return requirement with { Lime = requirement.Lime.Times(new Coefficient(depth / requirement.Depth)), Depth = depth };
    }

    /// <summary>The requirement by one method, or why it does not fit.</summary>
    internal static Answer<LimeRequirement> By(LimeQuestion question, LimeMethod method)
    {
        var buffer = method.Reads == LimeReads.BufferPh ? question.Test.Of(Analyte.BufferPh)?.Amount.Number : null;
        if ((LimeMethodChoice.Unfit(question, method) ?? method.Limits.Outside(method.Title, question.Test.SoilGroup, question.Ph, method.Kind == LimeMethodKind.Table ? null : buffer)) is { } refusal)
        {
            return Answer<LimeRequirement>.Refused(refusal);
        }

        if (question.Recent is not null && method.FormulaId != LimeFormulas.MehlichNorthCarolina.Id)
        {
            question.Assume("recent-lime", $"{method.Title} prints no credit for lime of the past year, so none is taken off. Test again before you spread.", method.Source);
        }

        return method.Kind == LimeMethodKind.Table ? LimeByTable.Of(question, method) : LimeByEquation.Of(question, method);
    }

    private static Answer<LimeRequirement> Best(LimeQuestion question, List<LimeMethod> methods)
    {
        var fitting = LimeMethodChoice.Fitting(question, methods);
        Refusal? first = null;
        foreach (var method in fitting)
        {
            var attempt = question.Again();
            attempt.Assume("lime-method", LimeMethodChoice.Reason(question, method, fitting), method.Source);
            if (By(attempt, method).TryGet(out var requirement, out var refusal))
            {
                return Answer<LimeRequirement>.Given(requirement);
            }

            first ??= refusal;
        }

        return Answer<LimeRequirement>.Refused(first ?? LimeMethodChoice.WhyNone(question, methods));
    }

    private static Answer<LimeRequirement> Fallback(LimeQuestion question, List<LimeMethod> methods, Refusal why, bool mayBeRough)
    {
        if (LaboratoryLime.Of(question.Again()) is { } laboratory)
        {
            return laboratory.Select(l => l with
            {
                Assumptions = [.. l.Assumptions, new Assumption("laboratory-lime-rate", $"The laboratory's own lime rate is used. {why.Message}", Citation.CommonPractice)],
            });
        }

        foreach (var method in mayBeRough ? LimeMethodChoice.Rough(question, methods) : [])
        {
            var attempt = question.Again();
            attempt.Assume("lime-without-buffer", $"{why.Message} {why.Suggestion}", Citation.OurJudgement);
            var rough = By(attempt, method);
            if (rough.IsGiven)
            {
                return rough;
            }
        }

        return Answer<LimeRequirement>.Refused(why);
    }

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
}
