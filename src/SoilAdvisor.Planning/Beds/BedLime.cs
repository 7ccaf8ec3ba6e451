using System.Globalization;
using SoilAdvisor.Agronomy.Acidity;
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

    public static BedLime Of(Bed bed, FarmRequest request, Tables tables, Offers offers, IReadOnlyList<Rating> ratings, IReadOnlyList<PlantingFloor> floors, WorkingSheet? working)
    {
        working?.Section("Lime");
        var answer = TargetPhChoice.For(bed.Plantings, bed.SoilTest, null, tables.TargetPhs, request.Region).Then(target => LimeWalk.For(Asked(target, bed, request, offers, ratings, floors), tables, working));
        if (!answer.TryGet(out var outcome, out var refused))
        {
            return new BedLime(null, refused, PhOf(bed.SoilTest), null);
        }

        var (requirement, choices) = (outcome.Requirement, outcome.Selection.Choices);
        if (requirement.Lime.IsZero)
        {
            return new BedLime(new LimePlan(requirement, [], null, null, outcome.Sulfur), null, requirement.SoilPh, null);
        }

        var chosen = offers.HoldsLime && choices.Count > 0 ? choices[0] : null;
        return new BedLime(new LimePlan(requirement, choices, chosen, outcome.Timing, null), null, requirement.Target.Value, Missed(requirement, choices, chosen));
    }

    private static LimeAsked Asked(TargetPhAnswer target, Bed bed, FarmRequest request, Offers offers, IReadOnlyList<Rating> ratings, IReadOnlyList<PlantingFloor> floors) =>
        new(bed.SoilTest, target, false, request.LimeMethod, request.Region, ratings.FirstOrDefault(r => r.Analyte == Analyte.Mg), [.. bed.Plantings.Select(p => p.Crop)], offers.Limes)
        {
            Recent = [.. bed.Applied.Where(a => a.Analysis.Share(Nutrient.CalciumCarbonate) > 0).Select(a => new EarlierLime(a.Material.Name, SpreadSinceSample.Supplied(a, bed).Of<CalciumCarbonate>(), a.Date))],
            Start = request.Date,
            Area = bed.Area,
            PotashNeed = floors.Where(f => f.Nutrient == Nutrient.K2O).Select(f => f.Low).Aggregate(default(MassPerArea), (a, b) => a + b),
        };

    private static Shortfall? Missed(LimeRequirement requirement, IReadOnlyList<LimeChoice> choices, LimeChoice? chosen) => chosen switch
    {
        null => NotOffered(requirement, choices),
        { Covers: < 1 } part => new Shortfall(
            Nutrient.CalciumCarbonate,
            null,
            requirement.Rate.Amount * (1 - part.Covers),
            false,
            $"Potash limits {part.Offered.Material.Name}: put a limestone on your list for the rest."),
        _ => null,
    };

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
