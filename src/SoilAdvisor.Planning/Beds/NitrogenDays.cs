using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Planning.Beds;

/// <summary>What has been released and what is wanted, by date, for one planting.</summary>
internal sealed class NitrogenDays(Bed bed, Planting planting, NitrogenTables tables, SoilTemperatures? soil)
{
    private readonly List<(Material Material, MaterialAnalysis Analysis, MassPerArea Rate, int? Day, RateRange? TiedUp)> spread = [];
    private readonly List<NutrientCredit> credits = [];

    /// <summary>True when the release of something spread is known by temperature.</summary>
    public bool UsesTemperature => spread.Exists(s => tables.ClassOf(s.Material.Id)?.Course is not null);

    /// <summary>Adds a part of a dressing.</summary>
    public void Add(DressingPart part, NitrogenDressing dressing, RateRange? tiedUp)
    {
        int? day = dressing.Time == DressingTime.Base ? -part.Offered.WaitBeforeSowingDays : AfterPlanting(dressing.From);
        spread.Add((part.Offered.Material, part.Offered.Analysis, part.Rate, day, tiedUp));
    }

    /// <summary>Adds what was spread for this season already.</summary>
    public void Add(AppliedMaterial applied, RateRange? tiedUp) =>
        spread.Add((applied.Material, applied.Analysis, MassPerArea.Of(applied.Amount, bed.Area), AfterPlanting(applied.Date) ?? 0, tiedUp));

    /// <summary>Adds a credit that does not come from what was spread for this season.</summary>
    public void Add(NutrientCredit credit) => credits.Add(credit);

    public IReadOnlyList<NitrogenDay> Of(IReadOnlyList<NitrogenDressing> dressings)
    {
        var stops = Stops(dressings).ToList();
        var days = new List<NitrogenDay>();
        var reached = new (MassPerArea Low, MassPerArea High)[spread.Count];
        foreach (var (day, what) in stops)
        {
            days.Add(new NitrogenDay(DateOf(day), day, what, Released(day, isEnd: false, reached), Wanted(dressings, day)));
        }

        var end = AfterPlanting(planting.HarvestEnd ?? planting.FirstHarvest);
        var name = planting.HarvestEnd is not null ? "last harvest" : planting.FirstHarvest is not null ? "first harvest" : "end of the season";
        days.Add(new NitrogenDay(DateOf(end), end, name, Released(end, isEnd: true, reached), Wanted(dressings, null)));
        return days;
    }

    private IEnumerable<(int Day, string What)> Stops(IReadOnlyList<NitrogenDressing> dressings)
    {
        var end = AfterPlanting(planting.HarvestEnd ?? planting.FirstHarvest) ?? int.MaxValue;
        List<(int Day, string What)> stops = [(0, "planting")];
        foreach (var dressing in dressings.Where(d => d.Time != DressingTime.Base))
        {
            if (AfterPlanting(dressing.From) is { } day && day > 0)
            {
                stops.Add((day, $"side-dressing: {string.Join(", ", dressing.Parts.Select(p => p.Offered.Material.Name).DefaultIfEmpty("nothing to spread"))}"));
            }
        }

        if (UptakeWords.SlowStart(planting.Crop.Id, tables)?.Days is { } slow)
        {
            stops.Add((slow, "uptake turns fast about now"));
        }

        return stops.Where(s => s.Day < end).GroupBy(s => s.Day).OrderBy(g => g.Key).Select(g => (g.Key, string.Join("; ", g.Select(s => s.What))));
    }

    private RateRange Released(int? day, bool isEnd, (MassPerArea Low, MassPerArea High)[] reached)
    {
        var (low, high) = (default(MassPerArea), default(MassPerArea));
        for (var i = 0; i < spread.Count; i++)
        {
            var (material, analysis, rate, from, tiedUp) = spread[i];
            if (!isEnd && (from is null || from > day))
            {
                continue;
            }

            var since = isEnd ? Math.Max((day ?? 0) - (from ?? 0), day is null ? NitrogenRelease.SeasonDays : 0) : day!.Value - from!.Value;
            var released = NitrogenRelease.By(material, analysis, tables, since, Temperature(from, since), isEnd);
            // A cooler week lowers the mean temperature; what was released before it is not taken back.
            reached[i] = (MassPerArea.Larger(reached[i].Low, released.Low.In(rate)), MassPerArea.Larger(reached[i].High, released.High.In(rate)));
            low += reached[i].Low + (tiedUp?.Low ?? default);
            high += reached[i].High + (tiedUp?.High ?? default);
        }

        foreach (var credit in credits)
        {
            low += isEnd || credit.Low < default(MassPerArea) ? credit.Low : default;
            high += MassPerArea.Larger(credit.Low, credit.High);
        }

        return new RateRange(low, MassPerArea.Larger(low, high));
    }

    private static RateRange Wanted(IReadOnlyList<NitrogenDressing> dressings, int? until, Func<DateOnly?, int?> afterPlanting) =>
        dressings.Where(d => until is null || d.Time == DressingTime.Base || afterPlanting(d.From) <= until).Select(d => d.Wanted).Aggregate(default(RateRange), (a, b) => a + b);

    private RateRange Wanted(IReadOnlyList<NitrogenDressing> dressings, int? until) => Wanted(dressings, until, AfterPlanting);

    private decimal? Temperature(int? from, int since) =>
        soil is { } known && planting.Planted is { } planted && from is { } day && since > 0
            ? known.Mean(planted.AddDays(day), planted.AddDays(day + since))
            : null;

    private DateOnly? DateOf(int? afterPlanting) => afterPlanting is { } days ? planting.Planted?.AddDays(days) : null;

    private int? AfterPlanting(DateOnly? day) => day is { } date && planting.Planted is { } planted ? date.DayNumber - planted.DayNumber : null;
}
