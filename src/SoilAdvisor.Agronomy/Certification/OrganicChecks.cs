using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Certification;

/// <summary>
/// Holds a bed's plan and records against the organic rules: prohibited and restricted materials, raw manure and harvest dates, magnesium
/// sulfate and its deficiency, sodium nitrate and its share. Micronutrients are <see cref="MicronutrientGuard"/>'s. The certifier decides.
/// </summary>
public static class OrganicChecks
{
    private const decimal MostOfNitrogenFromSodiumNitrate = 0.20m;

    /// <summary>The findings of one bed.</summary>
    /// <param name="bed">The bed with what was already spread on it.</param>
    /// <param name="applications">What the plan spreads.</param>
    /// <param name="ratings">Ratings of its soil test.</param>
    /// <param name="need">Its needs.</param>
    /// <param name="rules">The rules by id.</param>
    /// <param name="today">Date of the plan.</param>
    /// <param name="stone">The liming material that the plan spreads; null for none.</param>
    public static IReadOnlyList<Finding> For(
        Bed bed,
        IReadOnlyList<MaterialApplication> applications,
        IReadOnlyList<Rating> ratings,
        BedNeed need,
        IReadOnlyDictionary<string, OrganicRule> rules,
        DateOnly today,
        Material? stone = null) =>
        [
            .. (stone is null ? [] : new[] { stone }).Concat(applications.Select(a => a.Offered.Material)).Concat(bed.Applied.Select(a => a.Material))
                .DistinctBy(m => m.Id)
                .Where(m => m.Category != "micronutrient" && m.Manure == ManureKind.None)
                .Select(m => OfMaterial(m, bed, applications, ratings, need, rules)),
            .. bed.Applied.Where(a => a.Material.Manure != ManureKind.None).SelectMany(a => OfManureSpread(a, bed, rules)),
            .. applications.Where(a => a.Offered.Material.Manure != ManureKind.None).SelectMany(a => OfManurePlanned(a, bed, rules, today)),
        ];

    /// <summary>Findings on materials that the farm lists and no plan may use.</summary>
    /// <param name="listed">Materials on the shelf.</param>
    /// <param name="rules">The rules by id.</param>
    public static IReadOnlyList<Finding> OnTheShelf(IEnumerable<Material> listed, IReadOnlyDictionary<string, OrganicRule> rules) =>
        [.. listed.Where(m => m.Status == OrganicStatus.Prohibited).DistinctBy(m => m.Id).Select(m => Prohibited(m, rules, "It is left out of every plan."))];

    private static Finding OfMaterial(
        Material material,
        Bed bed,
        IReadOnlyList<MaterialApplication> applications,
        IReadOnlyList<Rating> ratings,
        BedNeed need,
        IReadOnlyDictionary<string, OrganicRule> rules)
    {
        if (material.Status == OrganicStatus.Prohibited)
        {
            return Prohibited(material, rules, "Do not spread it; call the certifier if it was spread.");
        }

        var rule = rules.For(material);
        return (material.Status, rule.Id) switch
        {
            (OrganicStatus.Allowed, _) => rule.Finding(FindingState.Pass, $"{material.Name} is allowed. Name it in the organic system plan.", "label or specification, and source"),
            (_, "magnesium-sulfate-deficiency") => MagnesiumSulfate(material, bed, ratings, rule),
            (_, "sodium-nitrate") => SodiumNitrate(material, applications, need, rule),
            _ => rule.Finding(FindingState.NotDecidable, $"{material.Name} is allowed under a condition: {Sentence(rule.WhatItAsks)} Ask the certifier before you spread it.", material.Note ?? "label, source, and the certifier's answer"),
        };
    }

    private static Finding Prohibited(Material material, IReadOnlyDictionary<string, OrganicRule> rules, string what) =>
        rules.For(material).Finding(FindingState.Act, $"{material.Name} is prohibited on organic ground ({material.Rule}). {what}", null, blocks: true);

    private static Finding MagnesiumSulfate(Material material, Bed bed, IReadOnlyList<Rating> ratings, OrganicRule rule)
    {
        var record = $"soil test {bed.SoilTest.Id} that shows the magnesium deficiency, or the maker's statement that the salt is mined";
        return ratings.FirstOrDefault(r => r.Analyte == Analyte.Mg) switch
        {
            { Standing: Standing.Below } low => rule.Finding(FindingState.Pass, $"{material.Name}: soil test {bed.SoilTest.Id} documents low magnesium ({low.Class.Name}).", record),
            { } enough => rule.Finding(FindingState.Act, $"{material.Name}: the soil test shows no magnesium deficiency ({enough.Class.Name}). Only the mined salt may be spread without one.", record, blocks: true),
            null => rule.Finding(FindingState.NotDecidable, $"{material.Name}: magnesium was not rated, so no deficiency is documented. Only the mined salt may be spread without one.", record),
        };
    }

    private static Finding SodiumNitrate(Material material, IReadOnlyList<MaterialApplication> applications, BedNeed need, OrganicRule rule)
    {
        const string Record = "nitrogen requirement of the crop with its source, and the amount of sodium nitrate";
        var wanted = need.Needs.Where(n => n.Nutrient == PlantNutrient.N).Aggregate(default(MassPerArea), (sum, n) => sum + n.Rate.Low);
        if (wanted <= default(MassPerArea))
        {
            return rule.Finding(FindingState.NotDecidable, $"{material.Name}: the nitrogen requirement of the crops is not known, so its 20 % cannot be counted.", Record);
        }

        var given = applications.Where(a => a.Offered.Material.Id == material.Id)
            .Aggregate(default(MassPerArea), (sum, a) => sum + (a.Rate * a.Offered.Analysis.Share(Nutrient.AvailableN)));
        var share = (decimal)(given.PoundsPerAcre / wanted.PoundsPerAcre);
        var words = $"{material.Name} gives {PlainNumber.Of(given.PoundsPerAcre)} of {PlainNumber.Of(wanted.PoundsPerAcre)} lb of nitrogen an acre, {PlainNumber.Of((double)share * 100)} %; at most 20 % is printed.";
        return share <= MostOfNitrogenFromSodiumNitrate
            ? rule.Finding(FindingState.NotDecidable, $"{words} Certifiers differ on whether it may be used at all: ask yours. None for Canada or the European Union.", Record)
            : rule.Finding(FindingState.Act, $"{words} Cut it to {PlainNumber.Of(wanted.PoundsPerAcre * 0.2)} lb of nitrogen an acre.", Record, blocks: true);
    }

    private static IEnumerable<Finding> OfManureSpread(AppliedMaterial applied, Bed bed, IReadOnlyDictionary<string, OrganicRule> rules)
    {
        if (applied.Material.Manure != ManureKind.Raw)
        {
            yield return TreatmentRecord(applied.Material, applied.Incorporated ?? applied.Date, bed.Plantings, rules);
            yield break;
        }

        foreach (var planting in bed.Plantings)
        {
            yield return Interval(applied.Material.Name, applied.Incorporated, planting, rules, planned: false);
        }
    }

    private static IEnumerable<Finding> OfManurePlanned(MaterialApplication application, Bed bed, IReadOnlyDictionary<string, OrganicRule> rules, DateOnly today)
    {
        var from = application.SpreadBy is { } by && by > today ? by : today;
        var bound = bed.Plantings.Skip(application.PlantingIndex).ToList();
        if (application.Offered.Material.Manure != ManureKind.Raw)
        {
            yield return TreatmentRecord(application.Offered.Material, application.SpreadBy is null ? null : from, bound, rules);
            yield break;
        }

        foreach (var planting in bound)
        {
            yield return Interval(application.Offered.Material.Name, application.SpreadBy is null ? null : from, planting, rules, planned: true);
        }
    }

    private static Finding Interval(string manure, DateOnly? incorporated, Planting planting, IReadOnlyDictionary<string, OrganicRule> rules, bool planned)
    {
        if (RawManureInterval.DaysFor(planting) == 0)
        {
            return rules.Named("raw-manure-non-food").Finding(FindingState.Pass, $"{manure}: {planting.Crop.Name} is not eaten, so no days are asked for it. They still run to the next food crop on this ground.", null);
        }

        var rule = rules.Named(RawManureInterval.DaysFor(planting) == RawManureInterval.ContactDays ? "raw-manure-120" : "raw-manure-90");
        var (state, message, record) = RawManureInterval.Check(manure, incorporated, planting);
        return rule.Finding(state, message, record, blocks: state == FindingState.Act || (planned && state == FindingState.NotDecidable));
    }

    private static Finding TreatmentRecord(Material material, DateOnly? spread, IEnumerable<Planting> bound, IReadOnlyDictionary<string, OrganicRule> rules)
    {
        var (rule, record) = material.Manure == ManureKind.Processed
            ? (rules.Named("processed-manure"), "maker's record of heat, moisture and pathogens")
            : (rules.Named("compost-process"), "mix sheet, temperature log and turning dates");
        var open = bound.Where(p => RawManureInterval.DaysFor(p) > 0 && (spread is not { } day || RawManureInterval.IsMet(day, p) != true)).ToList();
        return open.Count == 0
            ? rule.Finding(FindingState.Pass, $"{material.Name}: even without its records, counted as raw manure, the days to harvest are met. Keep the records all the same.", record)
            : rule.Finding(
                FindingState.NotDecidable,
                $"{material.Name} holds manure. With its records no waiting is asked; without them it counts as raw manure: {string.Join("; ", open.Select(p => spread is { } day
                    ? $"{p.Crop.Name} not before {PlainNumber.Date(RawManureInterval.EarliestHarvest(day, p))}"
                    : $"{p.Crop.Name} not before {RawManureInterval.DaysFor(p)} days after it is worked in"))}.",
                record);
    }

    private static string Sentence(string text) => text.EndsWith('.') ? text : text + ".";
}
