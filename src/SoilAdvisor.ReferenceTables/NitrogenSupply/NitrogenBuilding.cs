using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.NitrogenSupply;

/// <summary>From the checked tables of nitrogen release to their types.</summary>
internal static class NitrogenBuilding
{
    private static readonly IReadOnlyDictionary<string, SpreadingWay> Ways = new Dictionary<string, SpreadingWay>(StringComparer.Ordinal)
    {
        ["not-incorporated"] = SpreadingWay.NotIncorporated,
        ["incorporated"] = SpreadingWay.Incorporated,
        ["injected"] = SpreadingWay.Injected,
        ["onto-residue"] = SpreadingWay.OntoResidue,
    };

    private static readonly IReadOnlyDictionary<string, SpreadingWeather> Weathers = new Dictionary<string, SpreadingWeather>(StringComparer.Ordinal)
    {
        ["average"] = SpreadingWeather.Average,
        ["cool-wet"] = SpreadingWeather.CoolWet,
        ["cool-dry"] = SpreadingWeather.CoolDry,
        ["warm-wet"] = SpreadingWeather.WarmWet,
        ["warm-dry"] = SpreadingWeather.WarmDry,
    };

    private static readonly IReadOnlyDictionary<string, CarbonRatioUse> Uses = new Dictionary<string, CarbonRatioUse>(StringComparer.Ordinal)
    {
        ["net-release"] = CarbonRatioUse.NetRelease,
        ["tie-up"] = CarbonRatioUse.TieUp,
        ["predicted-share"] = CarbonRatioUse.PredictedShare,
    };

    private static readonly IReadOnlyDictionary<string, UptakeKind> UptakeKinds = new Dictionary<string, UptakeKind>(StringComparer.Ordinal)
    {
        ["slow-start"] = UptakeKind.SlowStart,
        ["last-days"] = UptakeKind.LastDays,
        ["line"] = UptakeKind.Line,
        ["peak-rate"] = UptakeKind.PeakRate,
    };

    /// <summary>Words of a way of spreading.</summary>
    public static IReadOnlyCollection<string> WayWords { get; } = [.. Ways.Keys];

    /// <summary>Words of the weather columns.</summary>
    public static IReadOnlyCollection<string> WeatherWords { get; } = [.. Weathers.Keys];

    /// <summary>Words of a carbon to nitrogen rule.</summary>
    public static IReadOnlyCollection<string> CarbonWords { get; } = [.. Uses.Keys];

    /// <summary>Words of a row on uptake.</summary>
    public static IReadOnlyCollection<string> UptakeWords { get; } = [.. UptakeKinds.Keys];

    public static NitrogenTables Build(TableFolder folder) => new(
        [.. folder.RowsOf(RowKinds.OrganicRelease).Select(Release)],
        [.. folder.RowsOf(RowKinds.AmmoniumKept).Select(row => new AmmoniumKept(
            row.Needed("retention"), Ways[row.Needed("how")], (int?)row.Number("within_days"), Weathers[row.Needed("weather")], ShareOf<AmmoniumN>.FromPercent((double)row.NeededNumber("kept")), row.Citation()))],
        [.. folder.RowsOf(RowKinds.SeasonShares).Select(row => new SeasonShare(
            row.Needed("season_class"), row.Number("low"), row.NeededNumber("high"), row.Needed("of") == "organic", row.Needed("setting") == "incubation",
            (int?)row.Number("days"), row.Number("temperature"), row.Parts("regions"), row["conditions"], row.Citation()))],
        [.. folder.RowsOf(RowKinds.TimeCourse).Select(row => new ReleasePoint(
            row.Needed("course"), row["material"], (int)row.NeededNumber("days"), row.Number("temperature"),
            Organic(row.NeededNumber("low")), Organic(row.NeededNumber("high")), row.Citation()))],
        [.. folder.RowsOf(RowKinds.CarbonToNitrogen).Select(row => new CarbonRatioRule(
            Uses[row.Needed("rule")], row.Number("ratio_from"), row.Number("ratio_below"), Total(row.Number("low")), Total(row.Number("high")), row.Citation()))],
        [.. folder.RowsOf(RowKinds.Uptake).Select(row => new UptakeFact(
            row["crop"], UptakeKinds[row.Needed("what")], (int?)row.Number("days"), row.Number("low"), row.Number("high"), row.Number("intercept"), row["conditions"], row.Citation()))],
        [.. folder.RowsOf(RowKinds.MaterialClasses).Select(row => new MaterialNitrogenClass(
            row.Needed("material"), row["manure_class"], row["season_class"], row["course"], row.Citation()))]);

    private static OrganicRelease Release(TableRow row) => new(
        row.Needed("series"),
        row.Parts("regions"),
        row.Needed("material_class"),
        row.Number("dry_matter_from"),
        row.Number("dry_matter_below"),
        [Organic("year_1", row), Organic("year_2", row), Organic("year_3", row)],
        Organic("three_years", row),
        row.Citation(),
        row["note"]);

    private static ShareOf<OrganicN>? Organic(string column, TableRow row) => row.Number(column) is { } percent ? Organic(percent) : null;

    private static ShareOf<OrganicN> Organic(decimal percent) => ShareOf<OrganicN>.FromPercent((double)percent);

    private static ShareOf<TotalN>? Total(decimal? percent) => percent is { } given ? ShareOf<TotalN>.FromPercent((double)given) : null;
}
