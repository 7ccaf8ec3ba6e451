using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops.Biomass;

/// <summary>How tall a stand was and how much of the ground it covered, where nothing was cut.</summary>
/// <param name="Height">Height when it was killed.</param>
/// <param name="Cover">Share of the ground that it covered, at most 100 %.</param>
public sealed record StandHeight(Length Height, MassShare Cover)
{
    /// <summary>What is said with every estimate from height.</summary>
    /// <param name="rules">Rules of measuring.</param>
    public static Assumption LowConfidence(CoverCropRules rules)
    {
        var found = rules.Of(CoverCropRules.HeightAndWeight);
        return new Assumption(
            "dry-matter-from-height",
            $"Low confidence: the dry matter is estimated from height and cover. {found?.Text} Cut, dry and weigh samples before you leave out fertilizer.".Replace("  ", " ", StringComparison.Ordinal),
            found?.Source ?? Citation.OurJudgement);
    }

    /// <summary>The estimate, or why the rule does not reach: it begins at 6 in, for grasses at 8 in.</summary>
    /// <param name="cover">The species.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    public Answer<MassPerArea> DryMatter(CoverCrop cover, WorkingSheet? working = null)
    {
        var formula = cover.Family == CoverCrop.Grasses ? BiomassFormulas.OfGrainHeight : BiomassFormulas.OfHeight;
        var (least, most) = (formula.Inputs[0].Min!.Value, formula.Inputs[0].Max!.Value);
        return Height.Inches < least || Height.Inches > most
            ? Answer<MassPerArea>.Refused(
                "height-out-of-rule",
                FormattableString.Invariant($"{cover.Name} of {Height.Inches:0.#} in: the rule of thumb holds from {least:0} to {most:0} in."),
                "Cut, dry and weigh samples, and give them as samples.")
            : Answer<MassPerArea>.Given(formula.Of((Height, Cover), working, Origin.Given("height"), Origin.Given("cover")));
    }
}
