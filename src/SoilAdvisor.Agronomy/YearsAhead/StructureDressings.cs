using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>
/// Compost for structure as a dressing that its phosphorus limits: never more than the phosphate ceiling and the largest single rate allow,
/// none at the stop limit.
/// </summary>
public static class StructureDressings
{
    private static readonly string[] ForStructure = ["compost", "mulch", "conditioner"];

    /// <summary>The dressing.</summary>
    /// <param name="asked">What is wanted.</param>
    /// <param name="offered">The material as the farm has it.</param>
    /// <param name="limits">How much phosphate it may lay down.</param>
    /// <param name="removed">Phosphate that the harvests of the season take; null when not known.</param>
    /// <param name="movement">Phosphate that moves the soil test; null where none is held for its extractant.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    /// <returns>The dressing, or a refusal: structure-not-compost, structure-at-stop-limit, structure-depth-without-density, structure-no-room.</returns>
    public static Answer<StructureDressing> Of(
        StructureAsked asked, OfferedMaterial offered, StructureLimits limits, Rate<TotalP2O5>? removed, TestMovement<TotalP2O5>? movement, WorkingSheet? working = null)
    {
        var name = offered.Material.Name;
        if (!ForStructure.Contains(offered.Material.Category))
        {
            return Refuse("structure-not-compost", $"{name} is a fertilizer, not a dressing for structure.", "Choose a compost for structure, or put the material on the list: the plan spreads it where a crop needs it.");
        }

        if (limits.AtStop)
        {
            return Refuse("structure-at-stop-limit", $"Soil phosphorus stands at the guide's stop limit: no compost is spread there, for structure neither. {name} would add more.", "Build structure here with cover crops and less tillage: they add no phosphorus.");
        }

        return Wanted(asked, offered, working).Then(wanted => Limited(wanted, offered, limits, removed, movement, working));
    }

    private static Answer<MassPerArea> Wanted(StructureAsked asked, OfferedMaterial offered, WorkingSheet? working)
    {
        if (asked.Rate is { } rate)
        {
            return Answer<MassPerArea>.Given(rate);
        }

        return VolumeMeasures.DensityOf(offered.Material) is { } published
            ? Answer<MassPerArea>.Given(YearsAheadFormulas.LayerOfCompost.Of(
                (new Coefficient(asked.Depth!.Value.Inches), new Coefficient(published.Density.KilogramsPerCubicMeter * CubicYard / Pound)), working, Origin.Given("depth of the layer"), Origin.From(published.Source)))
            : Answer<MassPerArea>.Refused(
                "structure-depth-without-density",
                $"No one weight of a cubic yard of {offered.Material.Name} is published, so a depth cannot be turned into an amount.",
                "Give a rate instead, for example 5 short-ton/acre: fill a bucket of known size, weigh it, and reckon what a layer weighs.");
    }

    private static Answer<StructureDressing> Limited(
        MassPerArea wanted, OfferedMaterial offered, StructureLimits limits, Rate<TotalP2O5>? removed, TestMovement<TotalP2O5>? movement, WorkingSheet? working)
    {
        var (poor, rich) = (offered.Analysis.Share(Nutrient.TotalP2O5), Math.Max(offered.Analysis.Share(Nutrient.TotalP2O5), offered.Analysis.High.GetValueOrDefault(Nutrient.TotalP2O5)));
        var (rate, reason) = (wanted, (string?)null);
        if (rate > offered.LargestSingleRate)
        {
            (rate, reason) = (offered.LargestSingleRate, $"its largest single rate is {PlainNumber.Of(offered.LargestSingleRate.PoundsPerAcre)} lb/acre");
        }

        if (limits.Cap is { } cap && rate > cap.Most)
        {
            (rate, reason) = (cap.Most, cap.Reason);
        }

        // The richest analysis counts: a limit must hold whatever the load turns out to be.
        if (limits.MostPhosphate is { } most && rich > 0 && rate * rich > most)
        {
            (rate, reason) = (MassPerArea.Larger(most, default) * (1 / rich), $"it may lay down at most {PlainNumber.Of(Math.Max(most.PoundsPerAcre, 0))} lb/acre of total phosphate (P2O5): {limits.Reason}");
        }

        if (rate.PoundsPerAcre < 1)
        {
            return Refuse("structure-no-room", $"No {offered.Material.Name} for structure fits: {reason ?? "the rate is nothing"}.", "Build structure here with cover crops and less tillage, or choose a compost with less phosphorus.");
        }

        var content = Origin.From(offered.Analysis.Sources.TryGetValue(Nutrient.TotalP2O5, out var sources) && sources.Count > 0 ? sources[0] : offered.Material.Source);
        var low = Laid(rate, poor, content, working);
        var high = Laid(rate, rich, content, working);
        var middle = (low + high) * 0.5;
        double? years = removed is { Amount.IsZero: false } taken
            ? YearsAheadFormulas.YearsOfRemoval.Of((middle, taken), working, Origin.Line(working?.LastLine ?? 0), Origin.Given("the harvests above")).Value
            : null;
        return Answer<StructureDressing>.Given(new StructureDressing(offered, wanted, rate, reason, low, high, years, Rise(low, middle, high, movement, working), [.. movement?.Assumptions ?? []]));
    }

    private static Rate<TotalP2O5> Laid(MassPerArea rate, double share, Origin content, WorkingSheet? working) =>
        new(MaterialFormulas.NutrientFromMaterial.Of((rate, MassShare.FromFraction(share)), working, Origin.Given("rate of the dressing"), content));

    private static ChangeOfTest? Rise(Rate<TotalP2O5> low, Rate<TotalP2O5> middle, Rate<TotalP2O5> high, TestMovement<TotalP2O5>? movement, WorkingSheet? working)
    {
        if (movement is null)
        {
            return null;
        }

        var (pounds, band) = (movement.PoundsPerUnit.Value, movement.BandFactor.Value);
        return new ChangeOfTest(By(low, pounds * band), By(middle, pounds), By(high, pounds / band));

        Coefficient By(Rate<TotalP2O5> laid, double for1) =>
            YearsAheadFormulas.ChangeOfPhosphorusTest.Of((laid, new Coefficient(for1)), working, Origin.Given("phosphate above"), Origin.From(movement.Source));
    }

    private static double CubicYard => UnitsNet.Volume.FromCubicYards(1).CubicMeters;

    private static double Pound => UnitsNet.Mass.FromPounds(1).Kilograms;

    private static Answer<StructureDressing> Refuse(string code, string message, string suggestion) => Answer<StructureDressing>.Refused(code, message, suggestion);
}
