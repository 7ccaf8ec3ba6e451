using SoilAdvisor.Agronomy.CoverCrops.Seed;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops.Mixtures;

/// <summary>From the wanted mixture to the seed that is weighed out for a bed.</summary>
public static class SeedMixtures
{
    /// <summary>Most species of one mixture.</summary>
    public const int MostSpecies = 4;

    private static readonly MassShare WholeBag = MassShare.FromFraction(1);

    /// <summary>The seed, or why it cannot be said: a species twice, no rate held, no seed count for seeds on a square foot.</summary>
    /// <param name="parts">One to <see cref="MostSpecies"/> species.</param>
    /// <param name="way">How they are sown.</param>
    /// <param name="bed">Ground to sow; null without a bed.</param>
    /// <param name="rules">Rules of sowing.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    public static Answer<SeedMixture> For(IReadOnlyList<MixturePart> parts, WayOfSowing way, Area? bed, CoverCropRules rules, WorkingSheet? working = null)
    {
        if (parts.GroupBy(p => p.CoverCrop.Id, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            return Answer<SeedMixture>.Refused("species-twice", $"{twice.First().CoverCrop.Name} stands twice in the mixture.", "Name each species once.");
        }

        var assumptions = new List<Assumption>();
        var equal = EqualShares(parts, rules, assumptions);
        var sown = new List<SownSpecies>(parts.Count);
        foreach (var part in parts)
        {
            if (!Sown(part, equal, way, bed, rules, assumptions, working).TryGet(out var one, out var reason))
            {
                return Answer<SeedMixture>.Refused(reason);
            }

            sown.Add(one);
        }

        MassShare? total = sown.All(s => s.Share is not null) ? MassShare.FromFraction(sown.Sum(s => s.Share!.Value.Fraction)) : null;
        return Answer<SeedMixture>.Given(new SeedMixture(
            sown,
            total,
            sown.Aggregate(default(MassPerArea), (sum, s) => sum + s.Seed),
            bed is null ? null : sown.Aggregate(Mass.Zero, (sum, s) => sum + s.ForBed!.Value),
            Sum(sown),
            Inoculants(sown),
            MixtureFit.Warnings(sown, total, rules),
            assumptions));
    }

    // Only where the grower gave neither a share nor seeds for any species.
    private static MassShare? EqualShares(IReadOnlyList<MixturePart> parts, CoverCropRules rules, List<Assumption> assumptions)
    {
        if (parts.All(p => p.Share is not null || p.Seeds is not null))
        {
            return null;
        }

        if (parts.Count == 2 && rules.Of(CoverCropRules.TwoSpeciesShare) is { Value: { } percent } rule)
        {
            assumptions.Add(new Assumption("mixture-garden-share", FormattableString.Invariant($"Where you gave no share, {percent} % of the full rate is taken, the garden rule for two species: {2 * percent} % in all."), rule.Source));
            return MassShare.FromPercent((double)percent);
        }

        if (parts.Count > 1)
        {
            assumptions.Add(new Assumption("mixture-equal-shares", FormattableString.Invariant($"Where you gave no share, the full rate is divided by the {parts.Count} species. Growers then lower the grass and raise the weak legume."), Citation.CommonPractice));
        }

        return MassShare.FromFraction(1.0 / parts.Count);
    }

    private static Answer<SownSpecies> Sown(MixturePart part, MassShare? equal, WayOfSowing way, Area? bed, CoverCropRules rules, List<Assumption> assumptions, WorkingSheet? working)
    {
        working?.Section(part.CoverCrop.Name);
        var known = Full(part, way, rules, working);
        var (count, countSource) = CountOf(part);
        if (part.Seeds is { } && count is null)
        {
            return Answer<SownSpecies>.Refused("no-seed-count", $"How many seeds of {part.CoverCrop.Name} weigh a pound is not held.", "Give seedsPerPound from the seed tag, or a share of the full rate.");
        }

        if (part.Seeds is null && !known.IsGiven)
        {
            return Answer<SownSpecies>.Refused(known.Reason);
        }

        var full = known.IsGiven ? known.Value : null;
        var wanted = part.Share ?? equal ?? WholeBag;
        var live = part.Seeds is { } seeds
            ? SeedFormulas.RateOfSeeds.Of((seeds, count!.Value), working, Origin.Given("seeds on a square foot"), From(countSource))
            : SeedFormulas.RateByShare.Of((full!.High, wanted), working, part.FullRate is null ? Origin.From(full.Source) : Origin.Given("full rate"), Origin.Given("share"));
        var liveLine = working?.LastLine ?? 0;
        Note(part, full, rules, assumptions);
        var share = part.Tag is { } tag ? SeedFormulas.PureLiveSeed.Of((tag.Purity, tag.Germination, tag.HardSeed), working, Origin.Given("seed tag"), Origin.Given("seed tag"), Origin.Given("seed tag")) : WholeBag;
        var seed = part.Tag is null ? live : SeedFormulas.SeedToSow.Of((live, share), working, Origin.Line(liveLine), Origin.Line(working?.LastLine ?? 0));
        var forBed = bed is { } ground ? AreaFormulas.RatePerBed.Of((seed, ground), working, Origin.Line(working?.LastLine ?? 0), Origin.Given("area")) : (Mass?)null;
        return Answer<SownSpecies>.Given(new SownSpecies(
            part.CoverCrop,
            part.Seeds is null ? wanted : full is null ? null : MassShare.FromFraction(live.PoundsPerAcre / full.High.PoundsPerAcre),
            live,
            share,
            seed,
            count is { } perPound ? part.Seeds ?? SeedFormulas.SeedsPerSquareFoot.Of((live, perPound), working, Origin.Line(liveLine), From(countSource)) : null,
            full,
            forBed,
            forBed is { } mass && part.PricePerKilogram is { } price ? price with { Value = price.Value * (decimal)mass.Kilograms } : null,
            part.CoverCrop.ValueOf("inoculant"),
            part.CoverCrop.ValueOf("seeding-depth"),
            part.Seeds is null ? full!.Source : Citation.OurArithmetic,
            count is null ? null : countSource ?? Citation.OurArithmetic));
    }

    private static Answer<FullRate> Full(MixturePart part, WayOfSowing way, CoverCropRules rules, WorkingSheet? working) => part.FullRate is { } given
        ? Answer<FullRate>.Given(new FullRate(given, given, Citation.OurArithmetic, null))
        : FullRate.Of(part.CoverCrop, way, rules, working);

    private static (SeedCount? Count, Citation? Source) CountOf(MixturePart part) =>
        part.Count is { } given ? (given, null)
        : part.CoverCrop.ValueOf("seeds-per-pound") is { Value: { } held } row ? (SeedCount.FromPerPound((double)held), row.Source)
        : (null, null);

    private static void Note(MixturePart part, FullRate? full, CoverCropRules rules, List<Assumption> assumptions)
    {
        var name = part.CoverCrop.Name;
        if (part.Seeds is null && part.FullRate is null && full is not null)
        {
            if (full.Assumption is { } factor)
            {
                assumptions.Add(factor);
            }

            if (full.Low < full.High)
            {
                assumptions.Add(new Assumption("seed-rate-high-end", $"{name}: {PlainNumber.Range(full.Low.PoundsPerAcre, full.High.PoundsPerAcre)} lb/acre is published; the high end is reckoned with, because a thin stand on a bed costs more than a handful of seed.", full.Source));
            }
        }

        if (part.Tag is null)
        {
            assumptions.Add(new Assumption("seed-all-live", $"{name}: no seed tag was given, so all of the bag counts as pure live seed. Give purity and germination from the tag to see how much more to sow.", Citation.CommonPractice));
        }
        else if (part.Tag.HardSeed.Fraction > 0)
        {
            assumptions.Add(new Assumption("hard-seed-counts", $"{name}: hard seed counts as live, although it comes up late. For a short gap leave hardSeed out.", Citation.CommonPractice));
        }

        if (part.Tag is { } tag && rules.Of(CoverCropRules.LeastGermination) is { Value: { } least } rule && tag.Germination.Percent < (double)least)
        {
            assumptions.Add(new Assumption("low-germination", FormattableString.Invariant($"{name}: germination of {tag.Germination.Percent:0.##} % is below the {least} % that is asked of seed; the rate is raised by the tag."), rule.Source));
        }
    }

    private static Money? Sum(List<SownSpecies> sown) =>
        sown.All(s => s.Cost is not null) && sown.Select(s => s.Cost!.Value.Currency).Distinct(StringComparer.Ordinal).Count() == 1
            ? new Money(sown.Sum(s => s.Cost!.Value.Value), sown[0].Cost!.Value.Currency)
            : null;

    private static IReadOnlyList<(Cited<string> Group, IReadOnlyList<CoverCrop> Legumes)> Inoculants(List<SownSpecies> sown) =>
    [
        .. sown.Where(s => s.Inoculant?.Text is not null)
            .GroupBy(s => s.Inoculant!.Text!, StringComparer.Ordinal)
            .Select(g => (new Cited<string>(g.Key, g.First().Inoculant!.Source), (IReadOnlyList<CoverCrop>)[.. g.Select(s => s.CoverCrop)])),
    ];

    private static Origin From(Citation? source) => source is null ? Origin.Given("seed tag") : Origin.From(source);
}
