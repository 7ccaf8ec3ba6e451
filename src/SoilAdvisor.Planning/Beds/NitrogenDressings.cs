using System.Globalization;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Planning.Beds;

/// <summary>
/// Divides what is spread for one planting over its dressings, in the proportion that the guide prints. The parts of a material add up to
/// its rate. Credits and everything that may not be spread beside a crop count for the base dressing first.
/// </summary>
internal sealed class NitrogenDressings(Bed bed, NutrientNeed need, DateOnly start, MassPerArea? smallestRate)
{
    private static readonly string[] BesideTheCrop = ["animal-meal", "plant-meal", "processed-manure", "mineral", "liquid"];

    private readonly List<Assumption> assumptions = [];

    public IReadOnlyList<Assumption> Assumptions => assumptions;

    public IReadOnlyList<NitrogenDressing> Of(IReadOnlyList<MaterialApplication> applications, MassPerArea credits, WorkingSheet? working)
    {
        var stops = Stops(working);
        var shares = Shares(stops, applications, credits);
        var parts = stops.Select(_ => new List<DressingPart>()).ToList();
        foreach (var application in applications)
        {
            var rates = MayBeSidedressed(application.Offered) ? Divide(application, shares) : [application.Rate, .. new MassPerArea[stops.Count - 1]];
            for (var i = 0; i < stops.Count; i++)
            {
                if (!rates[i].IsZero)
                {
                    parts[i].Add(Part(application, rates[i], stops[i]));
                }
            }
        }

        return [.. stops.Select((stop, i) => stop with { Parts = parts[i] })];
    }

    /// <summary>Whether a material may be spread beside a growing crop: it brings more nitrogen than phosphate or potash, and is no raw manure and no compost.</summary>
    public static bool MayBeSidedressed(OfferedMaterial offered)
    {
        var (material, nitrogen) = (offered.Material, offered.Analysis.Share(Nutrient.AvailableN));
        return material.Manure != ManureKind.Raw
            && BesideTheCrop.Contains(material.Category)
            && nitrogen > 0
            && nitrogen > offered.Analysis.Share(Nutrient.TotalP2O5)
            && nitrogen > offered.Analysis.Share(Nutrient.K2O);
    }

    private IReadOnlyList<NitrogenDressing> Stops(WorkingSheet? working)
    {
        var splits = need.Splits.Where(s => s.Nutrient == PlantNutrient.N).OrderBy(s => s.Order).ToList();
        var groups = splits.GroupBy(s => s.Time == DressingTime.Base ? 0 : s.Order).OrderBy(g => g.Key).Select(g => g.ToList()).ToList();
        if (groups.Count == 0 || groups[0][0].Time != DressingTime.Base)
        {
            groups.Insert(0, []);
        }

        if (splits.Count == 0)
        {
            return [new NitrogenDressing(DressingTime.Base, "before or at planting: the guide prints no split", null, bed.Plantings[need.PlantingIndex].Planted, need.Rate, [], need.Source)];
        }

        var printed = groups.ConvertAll(g => g.Count > 0 && g.TrueForAll(s => s.Rate is not null) ? g.Sum(s => s.Rate!.Value.Low.PoundsPerAcre) : (double?)null);
        var open = groups.Where((g, i) => g.Count > 0 && printed[i] is null).Count();
        var rest = Math.Max(0, need.Rate.Low.PoundsPerAcre - printed.Sum(p => p ?? 0));
        var weights = groups.Select((g, i) => g.Count == 0 ? 0 : printed[i] ?? rest / open).ToList();
        if (weights.Sum() <= 0)
        {
            weights = [.. groups.Select(g => g.Count == 0 ? 0.0 : 1.0)];
        }

        Assume("dressing-split", "The season's nitrogen is divided over the dressings in the proportion of the amounts that the guide prints, whatever credits leave of it. Credits and slow materials count for the base dressing first.", splits[0].Source);
        return [.. groups.Select((g, i) => Stop(g, weights[i], weights.Sum(), working)).Where((_, i) => i == 0 || groups[i].Count > 0)];
    }

    private NitrogenDressing Stop(List<RateSplit> group, double part, double all, WorkingSheet? working)
    {
        var planted = bed.Plantings[need.PlantingIndex].Planted;
        if (group.Count == 0)
        {
            return new NitrogenDressing(DressingTime.Base, "before planting: the guide gives nothing then", null, planted, default, [], need.Source);
        }

        var wanted = new RateRange(
            NitrogenFormulas.Dressing.Of((need.Rate.Low, new Coefficient(part), new Coefficient(all)), working, Origin.From(need.Source), Origin.From(group[0].Source), Origin.From(group[0].Source)),
            NitrogenFormulas.Dressing.Of((need.Rate.High, new Coefficient(part), new Coefficient(all))));
        var (from, to) = Dates(group[0], planted);
        return new NitrogenDressing(group[0].Time, string.Join("; ", group.Select(s => s.When)), from, to, wanted, [], group[0].Source);
    }

    private (DateOnly? From, DateOnly? To) Dates(RateSplit split, DateOnly? planted)
    {
        if (split.Time == DressingTime.Base)
        {
            return (null, planted);
        }

        if (split.Weeks is { } weeks && planted is { } day)
        {
            return (day.AddDays((int)(weeks.From * 7)), day.AddDays((int)(weeks.To * 7)));
        }

        if (split.Day is not { } printed)
        {
            return (null, null);
        }

        var after = planted ?? start;
        var first = new DateOnly(after.Year, printed.Month, printed.Day);
        var date = first >= after ? first : first.AddYears(1);
        return (date, date);
    }

    // What each dressing still asks of materials that can wait, as parts of one.
    private static double[] Shares(IReadOnlyList<NitrogenDressing> stops, IReadOnlyList<MaterialApplication> applications, MassPerArea credits)
    {
        var early = credits.PoundsPerAcre + applications.Where(a => !MayBeSidedressed(a.Offered)).Sum(a => a.Rate.PoundsPerAcre * a.Offered.Analysis.Share(Nutrient.AvailableN));
        var left = new double[stops.Count];
        for (var i = 0; i < stops.Count; i++)
        {
            var wanted = stops[i].Wanted.Low.PoundsPerAcre;
            left[i] = Math.Max(0, wanted - Math.Max(0, early));
            early -= early > 0 ? Math.Min(wanted, early) : 0;
        }

        // Nitrogen that the base dressing ties up is made good where it is missing: at once.
        left[0] += Math.Max(0, -early);
        var sum = left.Sum();
        return sum > 0 ? [.. left.Select(l => l / sum)] : [1, .. new double[stops.Count - 1]];
    }

    private MassPerArea[] Divide(MaterialApplication application, double[] shares)
    {
        var rates = shares.Select(s => application.Rate * s).ToArray();
        var largest = Array.IndexOf(rates, rates.Max());
        for (var i = 0; i < rates.Length; i++)
        {
            if (i != largest && !rates[i].IsZero && rates[i] < smallestRate)
            {
                Assume("dressing-merged", string.Create(CultureInfo.InvariantCulture, $"A part of {application.Offered.Material.Name} below the smallest rate that you can spread is given with its largest dressing."), Citation.OurJudgement);
                rates[i] = default;
            }
        }

        // The largest takes what the others leave, so that the parts add up to the rate exactly.
        rates[largest] = application.Rate - rates.Where((_, i) => i != largest).Aggregate(default(MassPerArea), (a, b) => a + b);
        return rates;
    }

    private DressingPart Part(MaterialApplication application, MassPerArea rate, NitrogenDressing stop)
    {
        var analysis = application.Offered.Analysis;
        var low = analysis.Share(Nutrient.AvailableN);
        var high = analysis.High.TryGetValue(Nutrient.AvailableN, out var most) ? Math.Max(low, most) : low;
        return new DressingPart(application.Offered, rate, rate.On(bed.Area), new RateRange(rate * low, rate * high), stop.Time == DressingTime.Base ? application.SpreadBy : stop.To);
    }

    private void Assume(string code, string text, Citation source)
    {
        if (!assumptions.Exists(a => a.Text == text))
        {
            assumptions.Add(new Assumption(code, text, source));
        }
    }
}
