using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Certification;

/// <summary>
/// Boron and the other micronutrients are never optimised. One is advised only where a rating below sufficiency documents the deficiency, the
/// crop responds, and for boron no sensitive crop stands now or next: then the lowest published rate, in grams to dissolve and spray, never
/// by the spoon. Otherwise a finding says why not.
/// </summary>
public static class MicronutrientGuard
{
    private static readonly (PlantNutrient Nutrient, Analyte Analyte, string Property, string Name)[] Guarded =
    [
        (PlantNutrient.B, Analyte.B, "boron", "boron"),
        (PlantNutrient.Zn, Analyte.Zn, "zinc", "zinc"),
        (PlantNutrient.Mn, Analyte.Mn, "manganese", "manganese"),
        (PlantNutrient.Cu, Analyte.Cu, "copper", "copper"),
        (PlantNutrient.Fe, Analyte.Fe, "iron", "iron"),
        (PlantNutrient.Mo, Analyte.Mo, "molybdenum", "molybdenum"),
    ];

    /// <summary>The findings of one bed, at most one for each micronutrient needed and one for each micronutrient material spread.</summary>
    /// <param name="bed">The bed.</param>
    /// <param name="applications">What the plan spreads.</param>
    /// <param name="ratings">Ratings of its soil test; there are none for a method that the guide does not cover.</param>
    /// <param name="need">Its needs, with the printed micronutrient rates.</param>
    /// <param name="rules">The rules by id.</param>
    /// <param name="today">Date of the plan.</param>
    /// <param name="materials">Materials of the tables, in their order: the first that carries the nutrient is named.</param>
    /// <param name="working">Receives the lines of the amount; null for none.</param>
    public static IReadOnlyList<Finding> For(
        Bed bed,
        IReadOnlyList<MaterialApplication> applications,
        IReadOnlyList<Rating> ratings,
        BedNeed need,
        IReadOnlyDictionary<string, OrganicRule> rules,
        DateOnly today,
        IEnumerable<Material> materials,
        WorkingSheet? working = null)
    {
        var rule = rules.Named("micronutrient-deficiency");
        var carriers = materials.Where(m => m.Category == "micronutrient").ToList();
        return
        [
            .. Guarded.Select(g => (g, rates: need.Needs.Where(n => n.Nutrient == g.Nutrient && n.Rate.High > default(MassPerArea)).ToList()))
                .Where(c => c.rates.Count > 0)
                .Select(c => Advise(c.g, c.rates, bed, ratings, rule, carriers, working)),
            .. applications.Select(a => a.Offered.Material).Concat(bed.Applied.Select(a => a.Material))
                .Where(m => m.Category == "micronutrient")
                .DistinctBy(m => m.Id)
                .Select(m => OfMaterial(m, bed, ratings, rule)),
        ];
    }

    private static Finding Advise(
        (PlantNutrient Nutrient, Analyte Analyte, string Property, string Name) guarded,
        List<NutrientNeed> rates,
        Bed bed,
        IReadOnlyList<Rating> ratings,
        OrganicRule rule,
        List<Material> carriers,
        WorkingSheet? working)
    {
        var name = guarded.Name;
        var record = $"soil or tissue test that shows low {name}, kept for the certifier";
        if (WhyNot(guarded, rates, bed, ratings) is { } why)
        {
            return rule.Finding(why.State, $"Spread no {name}. {why.Words}", record);
        }

        var lowest = rates.Where(r => Responds(guarded.Nutrient, CropOf(bed, r))).MinBy(r => r.Rate.Low)!;
        var carrier = carriers.FirstOrDefault(m => m.ValueOf(guarded.Property) is { Value: > 0 } or { Low: > 0 });
        var printed = $"{PlainNumber.Of(lowest.Rate.Low.PoundsPerAcre)} lb of {name} an acre, the lowest rate printed for {CropOf(bed, lowest)?.Name ?? lowest.Crop}";
        if (carrier is null)
        {
            return rule.Finding(FindingState.Act, $"The soil test documents low {name}: {printed}, is {PlainNumber.Of(lowest.Rate.Low.On(bed.Area).Grams)} g of {name} on this bed. No material that carries it is held; ask the certifier which to use.", record);
        }

        var content = carrier.ValueOf(guarded.Property)!;
        var share = MassShare.FromPercent((double)(content.Value ?? content.Low)!.Value);
        var product = guarded.Nutrient == PlantNutrient.B ? MaterialFormulas.BoronProduct : MaterialFormulas.MaterialForNutrient;
        var rate = product.Of((lowest.Rate.Low, share), working, Origin.From(lowest.Source), Origin.From(content.Source));
        var largest = carrier.ValueOf("largest-single-rate") is { Value: { } most } ? MassPerArea.FromPoundsPerAcre((double)most) : (MassPerArea?)null;
        // A rate that equals the limit but for the last bit of a double is not above it.
        var capped = largest is { } limit && rate > limit * (1 + 1e-9);
        var spread = capped ? largest!.Value : rate;
        var weighed = AreaFormulas.RatePerBed.Of((spread, bed.Area), working, Origin.Line(working?.LastLine ?? 0), Origin.Given(bed.AreaShown));
        var cap = capped ? $" That is more than the largest single rate held for {carrier.Name}, so the smaller one is given: do not add to it." : "";
        return rule.Finding(
            FindingState.Act,
            $"The soil test documents low {name}: {printed}.{cap} Weigh {PlainNumber.Of(weighed.Grams)} g of {carrier.Name} ({PlainNumber.Of(share.Percent)} % {name}), dissolve it and spray the whole bed evenly. Weigh it, never measure it by the spoon. Ask the certifier first.",
            record);
    }

    private static (FindingState State, string Words)? WhyNot(
        (PlantNutrient Nutrient, Analyte Analyte, string Property, string Name) guarded,
        List<NutrientNeed> rates,
        Bed bed,
        IReadOnlyList<Rating> ratings)
    {
        var rating = ratings.FirstOrDefault(r => r.Analyte == guarded.Analyte);
        if (rating is null)
        {
            return (FindingState.NotDecidable, $"The guide prints a rate where the soil is low, but no {guarded.Name} rating documents that. Have it tested by a method that a guide covers.");
        }

        if (rating.Standing == Standing.Information)
        {
            return (FindingState.NotDecidable, $"The guide gives a reference range for {guarded.Name}, not a rating of deficiency ({rating.Class.Name}). A tissue test would decide.");
        }

        if (rating.Standing != Standing.Below)
        {
            return (FindingState.Pass, $"The soil test rates it {rating.Class.Name}: no deficiency is documented.");
        }

        if (guarded.Nutrient == PlantNutrient.B && bed.Plantings.FirstOrDefault(p => p.Crop.SensitiveToBoron) is { } sensitive)
        {
            return (FindingState.Act, $"The soil test is low ({rating.Class.Name}), but boron injures {sensitive.Crop.Name}, which stands here now or next.");
        }

        return rates.Any(r => Responds(guarded.Nutrient, CropOf(bed, r)))
            ? null
            : (FindingState.Pass, $"The soil test is low ({rating.Class.Name}), but no source ranks {string.Join(", ", rates.Select(r => CropOf(bed, r)?.Name ?? r.Crop).Distinct())} as a crop that responds to it.");
    }

    // For boron the crop must be ranked as responding; for the others the printed rate is itself the sign that it does.
    private static bool Responds(PlantNutrient nutrient, Crop? crop) => nutrient != PlantNutrient.B || crop?.BoronResponse is "high" or "medium";

    private static Crop? CropOf(Bed bed, NutrientNeed need) => bed.Plantings.FirstOrDefault(p => p.Crop.Id == need.Crop)?.Crop;

    private static Finding OfMaterial(Material material, Bed bed, IReadOnlyList<Rating> ratings, OrganicRule rule)
    {
        var carried = Guarded.Where(g => material.ValueOf(g.Property) is not null).ToList();
        var names = string.Join(" and ", carried.Select(c => c.Name));
        return carried.Count > 0 && carried.All(c => ratings.Any(r => r.Analyte == c.Analyte && r.Standing == Standing.Below))
            ? rule.Finding(FindingState.Pass, $"{material.Name}: soil test {bed.SoilTest.Id} documents low {names}.", $"soil test {bed.SoilTest.Id}")
            : rule.Finding(FindingState.Act, $"{material.Name}: no soil or tissue test on file documents low {(names.Length == 0 ? "micronutrients" : names)}. Do not spread it without one.", "soil or tissue test that shows the deficiency", blocks: true);
    }
}
