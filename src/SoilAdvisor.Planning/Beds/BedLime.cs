using System.Globalization;
using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Planning.Beds;

/// <summary>Lime of a bed: fixed before any other material, so that what comes with it counts.</summary>
/// <param name="Plan">Requirement and stones; null when no requirement could be computed.</param>
/// <param name="Refused">Why there is none; null when there is one.</param>
/// <param name="PhAfterLiming">Soil pH that rock phosphate will meet; null when neither is known.</param>
/// <param name="Shortfall">The requirement when no offered stone meets it; null otherwise.</param>
internal sealed record BedLime(LimePlan? Plan, Refusal? Refused, decimal? PhAfterLiming, Shortfall? Shortfall)
{
    /// <summary>What the chosen stone brings.</summary>
    public NutrientVector Supplied => Plan?.Chosen?.Supplied ?? NutrientVector.Zero;

    /// <summary>Neutralising value that other materials may still bring.</summary>
    public MassPerArea Left => Plan is null ? default : MassPerArea.Larger(Plan.Requirement.Rate.Amount - Supplied[Nutrient.CalciumCarbonate], default);

    public static BedLime Of(Bed bed, FarmRequest request, Tables tables, Offers offers, IReadOnlyList<Rating> ratings, WorkingSheet? working)
    {
        working?.Section("Lime");
        var answer = TargetPhChoice.For(bed.Plantings, bed.SoilTest, null, tables.TargetPhs, request.Region).Then(t =>
            LimeRequirementCalculation.For(bed.SoilTest, t.Target, tables.LimeMethods.Values, request.LimeMethod, request.Region, t.Assumptions, working));
        if (!answer.TryGet(out var requirement, out var refused))
        {
            return new BedLime(null, refused, PhOf(bed.SoilTest), null);
        }

        requirement = LessApplied(requirement, bed);
        if (requirement.Rate.Amount.IsZero)
        {
            return new BedLime(new LimePlan(requirement, [], null), null, requirement.SoilPh, null);
        }

        var choices = LimeChoices.For(requirement, offers.Limes, ratings.FirstOrDefault(r => r.Analyte == Analyte.Mg), bed.Area, working);
        var chosen = offers.HoldsLime && choices.Count > 0 ? choices[0] : null;
        return new BedLime(new LimePlan(requirement, choices, chosen), null, requirement.Target.Value, chosen is null ? NotOffered(requirement, choices) : null);
    }

    private static LimeRequirement LessApplied(LimeRequirement requirement, Bed bed)
    {
        var applied = SpreadSinceSample.Of(bed)[Nutrient.CalciumCarbonate];
        if (applied <= default(MassPerArea) || requirement.Rate.Amount.IsZero)
        {
            return requirement;
        }

        var said = new Assumption(
            "lime-spread-since-sample",
            string.Create(CultureInfo.InvariantCulture, $"Materials spread since the sample bring {applied.PoundsPerAcre:0} lb/acre of CaCO3; that is taken off the lime requirement of {requirement.Rate.PoundsPerAcre:0} lb/acre."),
            Citation.OurArithmetic);
        return requirement with { Lime = requirement.Lime.Less(applied), Assumptions = [.. requirement.Assumptions, said] };
    }

    private static Shortfall NotOffered(LimeRequirement requirement, IReadOnlyList<LimeChoice> choices) => new(
        Nutrient.CalciumCarbonate,
        null,
        requirement.Rate.Amount,
        false,
        choices.Count > 0
            ? $"No lime is on your list. These would meet it: {string.Join("; ", choices.Take(3).Select(c => string.Create(CultureInfo.InvariantCulture, $"{c.Offered.Material.Name} at {c.Rate.PoundsPerAcre:0} lb/acre")))}."
            : "No lime is on your list, and the tables hold none that fits.");

    private static decimal? PhOf(SoilTest test) => test.Of(Analyte.Ph) is { Amount: { Kind: AmountKind.Measured } amount } ? amount.Number : null;
}
