using SoilAdvisor.Agronomy.Materials.Metals;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.ReferenceTables.NitrogenSupply;
using static SoilAdvisor.ReferenceTables.Kinds.ColumnType;

namespace SoilAdvisor.ReferenceTables.Kinds;

/// <summary>Every kind of table that is read. The columns are the contract; reference-tables/README.md says the same in words.</summary>
internal static class RowKinds
{
    private static readonly IReadOnlyCollection<string> RateUnits = ["lb/acre", "kg/ha", "lb/1000-sq-ft"];

    private static readonly IReadOnlyCollection<string> ConversionDetections = ["icp", "colorimetric", "any"];

    private static readonly IReadOnlyCollection<string> BufferWords = [.. Words.ProceduresOf(Analyte.BufferPh)!.Ids];

    private static readonly IReadOnlyCollection<string> NutrientWords = Enum.GetNames<PlantNutrient>();

    private static readonly IReadOnlyCollection<string> NitrogenMaterialClasses =
        ["cattle", "swine", "sheep", "horse", "poultry", "manure", "manure-with-bedding", "composted-manure", "feedlot", "poultry-litter", "compost"];

    private static readonly IReadOnlyCollection<string> NitrogenSeasonClasses =
    [
        "quick-release", "granular", "poultry-manure-compost", "yard-compost", "manure-compost", "plant-compost", "finished-compost", "compost", "municipal-compost",
        "manure", "cattle-manure", "poultry-litter", "farmyard-manure",
    ];

    private static readonly IReadOnlyCollection<string> DetectionWords = ["icp", "colorimetric", "any", "not-stated"];

    /// <summary>The limits that the sum of cations asks for.</summary>
    public static IReadOnlyList<string> CationLimitWords { get; } =
    [
        "highest-ph", "no-acidity-from-ph", "saline-saturated-paste", "saline-1-1", "saline-1-2", "low-calcium", "low-magnesium", "magnesium-to-calcium",
    ];

    /// <summary>What a limit on a metal bounds, by its word in the tables.</summary>
    public static IReadOnlyDictionary<string, MetalLimitKind> MetalLimitKinds { get; } = new Dictionary<string, MetalLimitKind>(StringComparer.Ordinal)
    {
        ["ceiling"] = MetalLimitKind.Ceiling,
        ["no-load-counted"] = MetalLimitKind.NoLoadCounted,
        ["cumulative"] = MetalLimitKind.Cumulative,
        ["annual"] = MetalLimitKind.Annual,
        ["for-each-percent-phosphate"] = MetalLimitKind.ForEachPercentPhosphate,
    };

    public static RowKind Ratings { get; } = Of("ratings", "guides/*", "ratings", Presence.Required,
        Text("analyte"), OptionalWord("extractant", Words.Extractants.Ids), Word("detection", DetectionWords),
        OptionalText("method"), Word("unit", Words.Units.Ids), OptionalText("crop_group"), OptionalText("soil_group"), OptionalText("subregion"),
        OptionalText("conditions"), OptionalWord("timing", Words.Timings.Ids), OptionalNumber("depth_from"), OptionalNumber("depth_to"), Text("class"), Word("standing", ["below", "target", "above", "stop", "information"]),
        Word("standing_basis", ["cited", "ours"]), new KindColumn("printed_decimals", Integer, true, null),
        OptionalNumber("lower"), Flag("lower_included"), OptionalNumber("upper"), Flag("upper_included"), OptionalNumber("lower_per_cec"), OptionalNumber("upper_per_cec"));

    public static RowKind Indices { get; } = Of("indices", "guides/*", "indices", Presence.Optional,
        Key("index"), Word("about", Words.Analytes.Ids), Key("formula"), Text("symbol"), Word("analyte", Words.Analytes.Ids),
        OptionalWord("extractant", Words.Extractants.Ids), Word("detection", DetectionWords), Word("unit", Words.Units.Ids));

    public static RowKind Ceilings { get; } = Of("ceilings", "guides/*", "ceilings", Presence.Optional,
        Text("analyte"), OptionalWord("extractant", Words.Extractants.Ids), Word("detection", DetectionWords), Word("unit", Words.Units.Ids),
        Number("limit"), Flag("limit_included"), Text("jurisdiction"), Text("what_it_asks"), OptionalText("condition"));

    public static RowKind Rates { get; } = Of("rates", "rate-tables/*", "rates", Presence.Optional,
        Key("crop"), Word("nutrient", NutrientWords), Text("class"), Number("low"), OptionalNumber("high"), Word("unit", RateUnits), OptionalText("soil_group"), OptionalText("condition"));

    public static RowKind Splits { get; } = Of("splits", "rate-tables/*", "splits", Presence.Optional,
        Key("crop"), Word("nutrient", NutrientWords), new KindColumn("order", Integer, false, null), OptionalNumber("low"), OptionalNumber("high"), OptionalWord("unit", RateUnits), Text("when"),
        Word("timing", ["base", "sidedress", "season"]), OptionalNumber("weeks_from"), OptionalNumber("weeks_to"), OptionalText("month_day"));

    public static RowKind RateParameters { get; } = Of("parameters", "rate-tables/*", "parameters", Presence.Optional,
        Key("symbol"), Text("meaning"), Number("value"), Text("unit"));

    public static RowKind Credits { get; } = Of("credits", "rate-tables/*", "credits", Presence.Optional,
        Word("kind", ["previous-crop", "cover-crop", "manure", "organic-matter"]), Text("what"), Number("low"), OptionalNumber("high"),
        Word("unit", ["lb/acre", "kg/ha", "lb/ton", "lb/1000-gal", "lb/acre per %"]), OptionalText("timing"), OptionalText("condition"));

    public static RowKind Crops { get; } = Of("crops", "crops", "crops", Presence.Required,
        Key("id"), Text("name"), OptionalText("latin_name"), Text("family"), Text("edible_part"), Word("soil_contact", ["contact", "no-contact"]),
        OptionalWord("boron_response", ["high", "medium", "low", "none"]), Flag("sensitive_to_boron"));

    public static RowKind CropValues { get; } = Of("crop-values", "crops", "crop-values", Presence.Required,
        Key("crop"), Word("property", PropertyUnits.OfCrops.Keys), OptionalNumber("value"), OptionalNumber("low"), OptionalNumber("high"), Text("unit"));

    public static RowKind Aliases { get; } = Of("aliases", "crops", "aliases", Presence.Optional, Text("alias"), Key("crop"));

    public static RowKind Removals { get; } = Of("removal", "crops", "removal", Presence.Required,
        Key("crop"), Word("part", ["harvested", "other"]), Text("basis"), Word("unit", ["lb/ton", "lb/cwt", "lb/bu", "kg/t"]),
        OptionalNumber("n"), OptionalNumber("p2o5"), OptionalNumber("k2o"), OptionalNumber("ca"), OptionalNumber("mg"), OptionalNumber("s"));

    public static RowKind TargetPhs { get; } = Of("target-ph", "crops", "target-ph", Presence.Optional,
        Text("crop_group"), OptionalText("crops"), Text("soil_class"), Word("soil", ["any", "mineral", "organic"]), Number("ph_low"), Number("ph_high"),
        Word("kind", ["optimum", "target", "minimum", "optimum-to-target"]), Text("region"), OptionalText("regions"));

    public static RowKind Materials { get; } = Of("materials", "materials", "materials", Presence.Required,
        Key("id"), Text("name"), Word("category", MaterialCategories), Word("basis", ["as-sold", "as-spread", "dry"]),
        Word("manure", ["none", "raw", "composted", "processed"]), Word("organic_status", ["allowed", "restricted", "prohibited"]), Text("organic_rule"),
        Flag("counted_in_season"), OptionalText("never_with"));

    public static RowKind MaterialValues { get; } = Of("material-values", "materials", "material-values", Presence.Required,
        Key("material"), Word("property", PropertyUnits.OfMaterials.Keys), OptionalNumber("value"), OptionalNumber("low"), OptionalNumber("high"), Text("unit"));

    public static RowKind Cautions { get; } = Of("cautions", "materials", "cautions", Presence.Required, Key("id"), Text("text"));

    public static RowKind MaterialCautions { get; } = Of("material-cautions", "materials", "material-cautions", Presence.Required, Key("material"), Key("caution"));

    public static RowKind CoverCrops { get; } = Of("cover-crops", "cover-crops", "cover-crops", Presence.Required,
        Key("id"), Text("name"), OptionalText("latin_name"), Text("family"), Text("life_cycle"), Word("season", ["warm", "cool", "both"]), Text("organic_note"));

    public static RowKind CoverCropValues { get; } = Of("cover-crop-values", "cover-crops", "cover-crop-values", Presence.Required,
        Key("cover_crop"), Word("property", PropertyUnits.OfCoverCrops.Keys), OptionalNumber("value"), OptionalNumber("low"), OptionalNumber("high"), OptionalText("unit"), OptionalText("text"));

    public static RowKind CoverCropRegionalDates { get; } = Of("cover-crop-regional-dates", "cover-crops", "regional-dates", Presence.Optional,
        Key("cover_crop"), Word("what", ["sow", "end", "plant-after"]), new KindColumn("from_month", Integer, false, null), new KindColumn("from_day", Integer, false, null),
        new KindColumn("to_month", Integer, true, null), new KindColumn("to_day", Integer, true, null), Text("region"), OptionalText("regions"), Text("text"));

    public static RowKind CoverCropPlantBack { get; } = Of("cover-crop-plant-back", "cover-crops", "plant-back", Presence.Optional,
        Key("id"), Word("cause", ["allelopathy", "immobilisation", "seedcorn-maggot", "cutworm", "settling", "none"]), OptionalText("cover_crops"), OptionalText("next_crops"),
        Word("when", ["killed-green", "winter-killed", "any"]), new KindColumn("days_low", Integer, false, null), new KindColumn("days_high", Integer, true, null), Flag("binding"), Text("text"));

    public static RowKind CoverCropHosts { get; } = Of("cover-crop-hosts", "cover-crops", "hosts", Presence.Optional,
        Key("cover_crop"), Text("problem"), Word("standing", ["host", "depends-on-cultivar", "poor-host", "lowers"]), OptionalText("families"), Text("text"));

    public static RowKind CoverCropTrials { get; } = Of("cover-crop-trials", "cover-crops", "trials", Presence.Optional,
        Key("cover_crop"), Word("subject", ["phosphorus", "nitrogen"]), Word("says", ["for", "against", "neither"]), Word("setting", ["field", "pots", "review"]), Text("text"));

    public static RowKind CoverCropStageNitrogen { get; } = Of("cover-crop-stage-nitrogen", "cover-crops", "stage-nitrogen", Presence.Optional,
        Word("plant_type", ["annual-legume", "perennial-legume", "grass", "brassica", "other"]), Word("stage", ["before-flowering", "flowering", "mature", "not-stated"]),
        Number("percent_low"), Number("percent_high"));

    public static RowKind CoverCropTerminationZones { get; } = Of("cover-crop-termination-zones", "cover-crops", "termination-zones", Presence.Optional,
        new KindColumn("zone", Integer, false, null), new KindColumn("days_from_planting", Integer, false, null), Text("text"));

    public static RowKind CoverCropRules { get; } = Of("cover-crop-rules", "cover-crops", "cover-crop-rules", Presence.Optional,
        Word("rule", Agronomy.CoverCrops.CoverCropRules.Known), OptionalNumber("value"), OptionalText("unit"), OptionalText("text"));

    public static RowKind LimeCells { get; } = Of("lime-cells", "lime-methods/*", "cells", Presence.Optional,
        OptionalNumber("buffer_ph"), OptionalNumber("acidity"), OptionalNumber("soil_ph"), OptionalText("soil_group"), OptionalNumber("target_ph"), Number("rate"));

    public static RowKind LimeEquations { get; } = Of("lime-equations", "lime-methods/*", "equations", Presence.Optional,
        Number("target_ph"), Number("constant"), Number("per_buffer"), Number("per_buffer_square"), Number("per_ph"));

    public static RowKind LimeParameters { get; } = Of("lime-parameters", "lime-methods/*", "parameters", Presence.Optional,
        Key("symbol"), Text("meaning"), Number("value"), Text("unit"));

    public static RowKind LimingFigures { get; } = Of("liming-figures", "liming", "figures", Presence.Optional,
        Key("subject"), Key("property"), OptionalNumber("value"), OptionalNumber("low"), OptionalNumber("high"), Text("unit"));

    public static RowKind Sieves { get; } = Of("sieves", "liming", "sieves", Presence.Optional, new KindColumn("mesh", Integer, false, null), Number("opening"));

    public static RowKind LimeIndexes { get; } = Of("lime-indexes", "liming", "indexes", Presence.Optional,
        Key("id"), Text("title"), OptionalText("region"), new KindColumn("formula", Id, true, null), OptionalWord("sieve_data", ["cumulative", "by-class"]), Flag("moisture_counted"),
        Word("unit", ["lb/ton", "%"]), Number("whole"), OptionalNumber("legal_minimum"),
        Word("counts", ["iowa-ecce", "kansas-ecc", "minnesota-enp", "ohio-enp", "missouri-enm", "new-york-env", "kentucky-rnv", "oregon-lime-score", "not-named"]));

    public static RowKind LimeDoseLimits { get; } = Of("lime-dose-limits", "liming", "dose-limits", Presence.Optional,
        Key("id"), Text("title"), OptionalText("region"), Word("incorporation", ["worked-in", "surface"]), Word("ground", ["beds", "field", "grassland", "lawn"]),
        OptionalText("soil_group"), Number("largest"), Word("unit", ["lb/100-sq-ft", "lb/1000-sq-ft", "ton/acre", "t/ha", "t-cao/ha"]),
        new KindColumn("months_from", Integer, true, null), new KindColumn("months_to", Integer, true, null));

    public static RowKind MagnesiumCutOffs { get; } = Of("magnesium-cut-offs", "liming", "magnesium-cut-offs", Presence.Optional,
        Key("id"), Text("title"), Text("region"), Number("dolomitic_below"), Word("unit", ["mg/kg", "mg/dm3"]));

    public static RowKind SulfurTable { get; } = Of("sulfur-table", "liming", "sulfur-table", Presence.Optional,
        Word("soil", ["sand", "loam", "clay"]), Number("start_ph"), Number("goal_ph"), Number("rate"));

    public static RowKind SulfurRules { get; } = Of("sulfur-rules", "liming", "sulfur-rules", Presence.Optional,
        Word("rule", ["tennessee", "extension", "royal-horticultural-society", "turf"]), Key("symbol"), Number("value"), Text("unit"));

    public static RowKind OrganicRules { get; } = Of("rules", "rules", "organic-rules", Presence.Required,
        Key("id"), Text("standard"), Text("section"), Text("subject"), Text("what_it_asks"));

    public static RowKind Variability { get; } = Of("variability", "variability", "variability", Presence.Optional,
        OptionalWord("analyte", Words.Analytes.Ids), OptionalWord("extractant", Words.Extractants.Ids), Word("kind", SpreadWords.Kinds), Word("used_for", SpreadWords.Uses),
        Word("use_basis", ["cited", "ours"]), Word("measure", SpreadWords.Measures), OptionalNumber("value"), OptionalNumber("low"), OptionalNumber("high"), OptionalWord("unit", Words.Units.Ids));

    public static RowKind CationWeights { get; } = Of("cation-weights", "cations", "weights", Presence.Required,
        Key("id"), Text("title"), Word("unit", ["mg/kg", "lb/acre"]), Number("ca"), Number("mg"), Number("k"), Number("na"));

    public static RowKind CationBuffers { get; } = Of("cation-buffers", "cations", "buffers", Presence.Required,
        Word("buffer", BufferWords), Number("per_unit"), Number("start_ph"), Word("unit", ["meq/100g", "meq/100cm3"]));

    public static RowKind CationLimits { get; } = Of("cation-limits", "cations", "limits", Presence.Required,
        Word("limit", CationLimitWords), Text("meaning"), Number("value"), Text("unit"));

    public static RowKind ReferenceSaturations { get; } = Of("reference-saturations", "cations", "reference-saturations", Presence.Optional,
        Word("extractant", Words.Extractants.Ids), Word("cation", ["Ca", "Mg", "K"]), Number("low"), Number("high"), Word("unit", ["%"]));

    public static RowKind RatioTrials { get; } = Of("ratio-trials", "cations", "ratio-trials", Presence.Required, Key("id"), Text("text"));

    public static RowKind MethodConversions { get; } = Of("method-conversions", "method-conversions", "conversions", Presence.Optional,
        Key("id"), Word("analyte", Words.Analytes.Ids), Text("from"), Word("from_detection", ConversionDetections), Text("to"), Word("to_detection", ConversionDetections), Word("verdict", ["convert", "refuse"]),
        OptionalNumber("slope"), OptionalNumber("intercept"), OptionalWord("unit", ["mg/kg", "pH"]), OptionalNumber("lower"), OptionalNumber("upper"), OptionalNumber("r_squared"),
        OptionalNumber("error"), OptionalWord("error_basis", ["cited", "ours"]), OptionalNumber("highest_ph"), Text("sample_set"), Text("validity"), OptionalText("reason"), OptionalText("disagreement"));

    public static RowKind QuadraticRates { get; } = Of("quadratic-rates", "rate-equations", "quadratic-rates", Presence.Optional,
        Key("id"), Number("a"), Number("b"), Number("c"), Word("unit", ["lb/acre", "lb/1000-sq-ft"]), OptionalNumber("tolerance"));

    public static RowKind SidedressRates { get; } = Of("sidedress-rates", "nitrate-tests", "sidedress-rates", Presence.Optional,
        Key("crop"), Flag("manured"), Number("nitrate_from"), OptionalNumber("nitrate_to"), Word("unit", ["mg/kg"]),
        Number("depth_from"), Number("depth_to"), Number("rate"), Word("rate_unit", ["lb/acre"]), OptionalText("how"));

    public static RowKind MetalRules { get; } = Of("metal-rules", "metals", "metal-rules", Presence.Optional,
        Key("id"), Text("title"), Text("region"), Word("covers", ["compost-and-manure", "fertiliser"]));

    public static RowKind MetalLimits { get; } = Of("metal-limits", "metals", "metal-limits", Presence.Optional,
        Key("rule"), Word("metal", Enum.GetNames<Metal>()), Word("kind", MetalLimitKinds.Keys), Number("value"), Word("unit", ["mg/kg", "kg/ha", "lb/acre"]),
        new KindColumn("years", Integer, true, null), OptionalNumber("least_percent"));

    public static RowKind Resampling { get; } = Of("resampling", "field-work", "resampling", Presence.Optional,
        Word("site", ["field", "high-tunnel"]), new KindColumn("years", Integer, false, null));

    public static RowKind SaltLimits { get; } = Of("salt-limits", "salts", "salt-limits", Presence.Optional,
        Word("extract", ["saturated-paste", "1:2", "1:5"]), Number("above"), Word("unit", ["dS/m"]));

    public static RowKind OrganicRelease { get; } = Of("organic-release", "nitrogen-release", "organic-release", Presence.Optional,
        Key("series"), OptionalText("regions"), Word("material_class", NitrogenMaterialClasses), OptionalNumber("dry_matter_from"), OptionalNumber("dry_matter_below"),
        OptionalNumber("year_1"), OptionalNumber("year_2"), OptionalNumber("year_3"), OptionalNumber("three_years"));

    public static RowKind AmmoniumKept { get; } = Of("ammonium-kept", "nitrogen-release", "ammonium-kept", Presence.Optional,
        Key("retention"), Word("how", NitrogenBuilding.WayWords), new KindColumn("within_days", Integer, true, null), Word("weather", NitrogenBuilding.WeatherWords), Number("kept"));

    public static RowKind SeasonShares { get; } = Of("season-shares", "nitrogen-release", "season-shares", Presence.Optional,
        Word("season_class", NitrogenSeasonClasses), OptionalNumber("low"), Number("high"), Word("of", ["total", "organic"]), Word("setting", ["incubation", "field"]),
        new KindColumn("days", Integer, true, null), OptionalNumber("temperature"), OptionalText("regions"), OptionalText("conditions"));

    public static RowKind TimeCourse { get; } = Of("time-course", "nitrogen-release", "time-course", Presence.Optional,
        Key("course"), new KindColumn("material", Id, true, null), new KindColumn("days", Integer, false, null), OptionalNumber("temperature"), Number("low"), Number("high"));

    public static RowKind CarbonToNitrogen { get; } = Of("carbon-to-nitrogen", "nitrogen-release", "carbon-to-nitrogen", Presence.Optional,
        Word("rule", NitrogenBuilding.CarbonWords), OptionalNumber("ratio_from"), OptionalNumber("ratio_below"), OptionalNumber("low"), OptionalNumber("high"));

    public static RowKind Uptake { get; } = Of("uptake", "nitrogen-release", "uptake", Presence.Optional,
        new KindColumn("crop", Id, true, null), Word("what", NitrogenBuilding.UptakeWords), new KindColumn("days", Integer, true, null), OptionalNumber("low"), OptionalNumber("high"),
        Word("unit", ["days", "%", "lb/acre per day"]), OptionalNumber("intercept"), OptionalText("conditions"));

    public static RowKind MaterialClasses { get; } = Of("material-classes", "nitrogen-release", "material-classes", Presence.Optional,
        Key("material"), OptionalWord("manure_class", NitrogenMaterialClasses), OptionalWord("season_class", NitrogenSeasonClasses), new KindColumn("course", Id, true, null));

    public static RowKind TestChanges { get; } = Of("test-changes", "test-changes", "changes", Presence.Optional,
        Key("id"), Word("nutrient", ["P2O5", "K2O"]), OptionalWord("extractant", Words.Extractants.Ids), OptionalWord("printed_for", Words.Extractants.Ids), Word("used_for", MovementWords.Uses),
        OptionalNumber("value"), OptionalNumber("per_cec"), OptionalNumber("band_factor"), OptionalNumber("low"), OptionalNumber("high"),
        OptionalText("unit"), OptionalText("regions"), OptionalText("text"));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<RowKind> All { get; } =
    [
        Ratings, Indices, Ceilings, Rates, Splits, RateParameters, Credits, Crops, CropValues, Aliases, Removals, TargetPhs, Materials, MaterialValues, Cautions,
        MaterialCautions, CoverCrops, CoverCropValues, LimeCells, LimeEquations, LimeParameters, OrganicRules, Variability, QuadraticRates, SidedressRates,
        TestChanges, CationWeights, CationBuffers, CationLimits, ReferenceSaturations, RatioTrials, MethodConversions,
        MaterialCautions, CoverCrops, CoverCropValues, CoverCropRegionalDates, CoverCropPlantBack, CoverCropHosts, CoverCropTrials, CoverCropStageNitrogen,
        CoverCropTerminationZones, CoverCropRules, LimeCells, LimeEquations, LimeParameters, OrganicRules, Variability, QuadraticRates, SidedressRates,
        CationWeights, CationBuffers, CationLimits, ReferenceSaturations, RatioTrials, MethodConversions,
        MetalRules, MetalLimits, SaltLimits, Resampling, LimingFigures, Sieves, LimeIndexes, LimeDoseLimits, MagnesiumCutOffs, SulfurTable, SulfurRules,
        OrganicRelease, AmmoniumKept, SeasonShares, TimeCourse, CarbonToNitrogen, Uptake, MaterialClasses,
    ];

    /// <summary>Categories of materials; <c>never_with</c> may name one of them or a material.</summary>
    public static IReadOnlyCollection<string> MaterialCategories =>
    [
        "animal-meal", "plant-meal", "manure", "processed-manure", "compost", "mineral", "lime", "micronutrient", "liquid", "mulch", "conditioner", "prohibited",
    ];

    private static RowKind Of(string name, string home, string fileName, Presence presence, params KindColumn[] own) =>
        new(name, home, fileName, presence, [.. own, Word("evidence", EvidenceWords.All), new KindColumn("source", Id, true, null), OptionalText("locator"), OptionalText("note")]);

    private static KindColumn Text(string name) => new(name, ColumnType.Text, false, null);

    private static KindColumn OptionalText(string name) => new(name, ColumnType.Text, true, null);

    private static KindColumn Number(string name) => new(name, ColumnType.Number, false, null);

    private static KindColumn OptionalNumber(string name) => new(name, ColumnType.Number, true, null);

    private static KindColumn Key(string name) => new(name, Id, false, null);

    private static KindColumn Flag(string name) => new(name, YesNo, false, null);

    private static KindColumn Word(string name, IEnumerable<string> words) => new(name, ColumnType.Text, false, [.. words]);

    private static KindColumn OptionalWord(string name, IEnumerable<string> words) => new(name, ColumnType.Text, true, [.. words]);
}
