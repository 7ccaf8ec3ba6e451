using System.Globalization;
using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.Acidity.Sulfur;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Planning;

/// <summary>From a soil test to the lime that is spread: one walk, for a bed of a plan and for a question about lime alone.</summary>
public static class LimeWalk
{
    /// <summary>The requirement: by its method, for the depth that is worked, for the mass of a light bed, less earlier lime.</summary>
    /// <param name="asked">What decides it.</param>
    /// <param name="tables">The reference tables.</param>
    /// <param name="working">Receives the lines; null for none.</param>
    public static Answer<LimeRequirement> Requirement(LimeAsked asked, Tables tables, WorkingSheet? working) =>
        LimeRequirementCalculation.For(asked.Test, asked.Target.Target, tables.LimeMethods.Values, asked.Method, asked.Region, asked.Target.Assumptions, working)
            .Select(r => asked.Depth is { } depth ? LimeRequirementCalculation.ForDepth(r, depth, working) : OnSurface(r, asked.OnSurface))
            .Select(r => LightBed.For(r, asked.Test, MethodOf(r, tables), tables.Liming, working))
            .Select(r => RecentLimeCredit.Less(r, asked.Recent, asked.Test, MethodOf(r, tables), working));

    /// <summary>The requirement and what is spread for it; or, above the target, how to lower the pH.</summary>
    /// <param name="asked">What decides it.</param>
    /// <param name="tables">The reference tables.</param>
    /// <param name="working">Receives the lines; null for none.</param>
    public static Answer<LimeOutcome> For(LimeAsked asked, Tables tables, WorkingSheet? working) =>
        Requirement(asked, tables, working).Select(requirement =>
        {
            var ground = new LimeGround(
                tables.Liming,
                MagnesiumTest.For(asked.Test, asked.Region, tables.Liming.MagnesiumCutOffs, asked.Magnesium),
                asked.Crops,
                asked.Test.SoilGroup,
                asked.Region,
                asked.OnSurface,
                asked.Start,
                asked.Area,
                asked.PotashNeed);
            var selection = LimeChoices.For(requirement, asked.Offered, ground, working);
            return new LimeOutcome(
                requirement,
                selection,
                selection.Choices.Count > 0 ? LimeTiming.Of(tables.Liming, selection.Choices[0].Doses) : null,
                SulfurChoice.For(requirement, asked.Test, asked.TargetAsked, tables.Liming, asked.Start, asked.Area, working));
        });

    private static LimeMethod? MethodOf(LimeRequirement requirement, Tables tables) => tables.LimeMethods.TryGetValue(requirement.Method, out var method) ? method : null;

    private static LimeRequirement OnSurface(LimeRequirement requirement, bool onSurface) => onSurface && !requirement.Lime.IsZero
        ? requirement with
        {
            Assumptions =
            [
                .. requirement.Assumptions,
                new Assumption(
                    "surface-depth",
                    string.Create(CultureInfo.InvariantCulture, $"The rate is for a depth of {requirement.Depth.Inches:0.#} in, and lime on the surface reaches the top 2 to 4 in only. Sample that layer and give its depth."),
                    Citation.CommonPractice),
            ],
        }
        : requirement;
}
