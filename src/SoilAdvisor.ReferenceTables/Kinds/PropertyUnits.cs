namespace SoilAdvisor.ReferenceTables.Kinds;

/// <summary>The properties of crops, materials and cover crops, and the units in which each may be written. An empty unit stands for words.</summary>
internal static class PropertyUnits
{
    private static readonly string[] Percent = ["%"];
    private static readonly string[] Ph = ["pH"];
    private static readonly string[] Days = ["days"];
    private static readonly string[] PoundsPerAcre = ["lb/acre"];
    private static readonly string[] Score = ["0-3"];
    private static readonly string[] InWords = [""];

    public static IReadOnlyDictionary<string, string[]> OfCrops { get; } = new Dictionary<string, string[]>(StringComparer.Ordinal)
    {
        ["target-ph"] = Ph,
        ["lime-below-ph"] = Ph,
        ["ph-range"] = Ph,
        ["typical-yield"] = ["cwt/acre", "ton/acre", "bu/acre", "lb/acre", "t/ha", "kg/ha"],
        ["yield-per-row"] = ["lb/100 ft", "heads/100 ft", "bunches/100 ft"],
        ["days-to-maturity"] = ["day"],
        ["salt-threshold"] = ["dS/m"],
        ["salt-slope"] = ["% per dS/m"],
        ["boron-rate"] = PoundsPerAcre,
    };

    public static IReadOnlyDictionary<string, string[]> OfMaterials { get; } = new Dictionary<string, string[]>(StringComparer.Ordinal)
    {
        ["total-nitrogen"] = Percent,
        ["total-p2o5"] = Percent,
        ["available-p2o5"] = Percent,
        ["k2o"] = Percent,
        ["calcium"] = Percent,
        ["magnesium"] = Percent,
        ["sulfur"] = Percent,
        ["sodium"] = Percent,
        ["chloride"] = Percent,
        ["carbon"] = Percent,
        ["boron"] = Percent,
        ["zinc"] = Percent,
        ["manganese"] = Percent,
        ["copper"] = Percent,
        ["iron"] = Percent,
        ["molybdenum"] = Percent,
        ["carbon-to-nitrogen"] = ["ratio"],
        ["moisture"] = Percent,
        ["bulk-density"] = ["kg/m3", "lb/cubic-foot", "lb/cubic-yard", "lb/gal", "lb/cup", "lb/pint"],
        ["available-nitrogen-share"] = Percent,
        ["available-p2o5-share"] = Percent,
        ["k2o-available-share"] = Percent,
        ["neutralising-value"] = ["% CaCO3"],
        ["usable-below-ph"] = Ph,
        ["largest-single-rate"] = PoundsPerAcre,
        ["wait-before-sowing"] = Days,
    };

    public static IReadOnlyDictionary<string, string[]> OfCoverCrops { get; } = new Dictionary<string, string[]>(StringComparer.Ordinal)
    {
        ["minimum-germination-temperature"] = ["F", "C"],
        ["frost"] = InWords,
        ["kill-temperature"] = ["F"],
        ["hardiness-zone"] = ["zone"],
        ["window"] = InWords,
        ["termination"] = InWords,
        ["tillage-to-end"] = InWords,
        ["reseeding"] = InWords,
        ["stock-toxicity"] = InWords,
        ["caution"] = InWords,
        ["days-to-use"] = ["days", ""],
        ["days-to-flower"] = Days,
        ["days-from-flower-to-end"] = Days,
        ["sow-before-first-frost"] = Days,
        ["degree-days-to-use"] = ["F-days above 32 F"],
        ["drilled-rate"] = PoundsPerAcre,
        ["broadcast-rate"] = PoundsPerAcre,
        ["seeding-depth"] = ["in"],
        ["seeds-per-pound"] = ["seeds/lb"],
        ["seed-price"] = ["USD/lb"],
        ["inoculant"] = InWords,
        ["dry-matter"] = PoundsPerAcre,
        ["dry-matter-late-sown"] = PoundsPerAcre,
        ["dry-matter-young"] = PoundsPerAcre,
        ["nitrogen-percent"] = Percent,
        ["phosphorus-percent"] = Percent,
        ["potassium-percent"] = Percent,
        ["root-phosphorus-percent"] = Percent,
        ["root-potassium-percent"] = Percent,
        ["phosphorus-uptake"] = ["kg P/ha"],
        ["root-phosphorus-uptake"] = ["kg P/ha"],
        ["phosphorus-release-threshold"] = Percent,
        ["carbon-to-nitrogen"] = ["ratio"],
        ["carbon-to-nitrogen-vegetative"] = ["ratio"],
        ["carbon-to-nitrogen-flowering"] = ["ratio"],
        ["carbon-to-nitrogen-mature"] = ["ratio"],
        ["nitrogen-fixed"] = PoundsPerAcre,
        ["function-phosphorus"] = Score,
        ["function-nitrogen-source"] = Score,
        ["function-nitrogen-scavenger"] = Score,
        ["function-weeds"] = Score,
        ["function-cover-fast"] = Score,
        ["function-compaction"] = Score,
        ["function-erosion"] = Score,
        ["function-nematodes"] = Score,
        ["function-pollinators"] = Score,
        ["function-biofumigation"] = Score,
        ["soil-ph"] = ["pH", ""],
        ["drainage"] = InWords,
        ["drought"] = InWords,
        ["shade"] = InWords,
        ["heat"] = InWords,
        ["salinity"] = InWords,
    };
}
