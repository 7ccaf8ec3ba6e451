using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>From the forms of nitrogen in a material to what comes of them, when, and to the parts of a rate that is split.</summary>
public static class NitrogenFormulas
{
    private static readonly Citation Montana = new("mt-cnmp", "worked example", Evidence.Seen);
    private static readonly Citation Alberta = new("ab-nmpg-manure", "p. 163 and 168", Evidence.Seen);

    /// <summary>Organic nitrogen of a material: what is left of the total once ammonium and nitrate are taken off.</summary>
    public static Formula<(MassShare Total, MassShare Ammonium, MassShare Nitrate), MassShare> OrganicNitrogen { get; } = new(
        "organic-nitrogen",
        "Organic nitrogen of a material",
        "O = N − A − Q",
        Montana,
        [
            new(new Symbol("N", "total nitrogen", "lb/ton", 0), x => x.Total.PoundsPerShortTon),
            new(new Symbol("A", "ammonium nitrogen", "lb/ton", 0), x => x.Ammonium.PoundsPerShortTon),
            new(new Symbol("Q", "nitrate nitrogen", "lb/ton", 0), x => x.Nitrate.PoundsPerShortTon),
        ],
        new(new Symbol("O", "organic nitrogen", "lb/ton"), y => y.PoundsPerShortTon),
        v => (MassShare.FromPoundsPerShortTon(v[0]), MassShare.FromPoundsPerShortTon(v[1]), MassShare.FromPoundsPerShortTon(v[2])),
        x => MassShare.FromFraction(x.Total.Fraction - x.Ammonium.Fraction - x.Nitrate.Fraction));

    /// <summary>Ammonium nitrogen that is kept after spreading; the rest goes into the air.</summary>
    public static Formula<(MassShare Ammonium, ShareOf<AmmoniumN> Kept), MassShare> AmmoniumKept { get; } = new(
        "ammonium-kept",
        "Ammonium nitrogen kept after spreading",
        "K = A × r",
        Alberta,
        [
            new(new Symbol("A", "ammonium nitrogen", "lb/ton", 0), x => x.Ammonium.PoundsPerShortTon),
            new(new Symbol("r", "part of it that is kept", "", 0, 1), x => x.Kept.Fraction),
        ],
        new(new Symbol("K", "ammonium nitrogen kept", "lb/ton"), y => y.PoundsPerShortTon),
        v => (MassShare.FromPoundsPerShortTon(v[0]), ShareOf<AmmoniumN>.FromFraction(v[1])),
        x => MassShare.FromFraction(x.Ammonium.Fraction * x.Kept.Fraction));

    /// <summary>Organic nitrogen of one spreading that becomes available in one year after it: the first, the second or the third.</summary>
    public static Formula<(Rate<OrganicN> Organic, ShareOf<OrganicN> InYear), Rate<AvailableN>> ReleasedInYear { get; } = new(
        "organic-nitrogen-in-year",
        "Organic nitrogen that becomes available in a year",
        "C = O × m",
        new Citation("cornell-css412", "release table", Evidence.Seen),
        [
            new(new Symbol("O", "organic nitrogen that was spread", "lb/acre", 0), x => x.Organic.PoundsPerAcre),
            new(new Symbol("m", "part of it that becomes available in that year", "", 0, 1), x => x.InYear.Fraction),
        ],
        new(new Symbol("C", "nitrogen that becomes available in that year", "lb/acre"), y => y.PoundsPerAcre),
        v => (Rate<OrganicN>.FromPoundsPerAcre(v[0]), ShareOf<OrganicN>.FromFraction(v[1])),
        x => new Rate<AvailableN>(x.InYear.Of(x.Organic)),
        "The page gives the inputs of its example and leaves the answer to a calculator; the series are checked row by row.");

    /// <summary>
    /// Nitrogen that soil life takes up while it decays a material rich in carbon. At the threshold ratio K the material's own nitrogen just
    /// suffices; above it the rest is taken from the soil. The two published thresholds, 20 and 30, give the two ends.
    /// </summary>
    public static Formula<(Rate<TotalN> Nitrogen, Coefficient Ratio, Coefficient Threshold), Rate<AvailableN>> TiedUp { get; } = new(
        "nitrogen-tied-up",
        "Nitrogen tied up by a material rich in carbon",
        "T = N × max(R / K − 1, 0)",
        new Citation("our-arithmetic", "from the thresholds 20 and 30 of the Alberta guide, p. 167", Evidence.Ours),
        [
            new(new Symbol("N", "total nitrogen that is spread with it", "lb/acre", 0), x => x.Nitrogen.PoundsPerAcre),
            new(new Symbol("R", "its carbon to nitrogen ratio", "", 0, 2000), x => x.Ratio.Value),
            new(new Symbol("K", "ratio at which nothing is taken up or released", "", 20, 30), x => x.Threshold.Value),
        ],
        new(new Symbol("T", "nitrogen tied up", "lb/acre"), y => y.PoundsPerAcre),
        v => (Rate<TotalN>.FromPoundsPerAcre(v[0]), new Coefficient(v[1]), new Coefficient(v[2])),
        x => Rate<AvailableN>.FromPoundsPerAcre(x.Nitrogen.PoundsPerAcre * Math.Max((x.Ratio.Value / x.Threshold.Value) - 1, 0)),
        "The thresholds are published, an amount is not: the arithmetic between them is ours.");

    /// <summary>A share between two published points, on the straight line that joins them.</summary>
    public static Formula<(ShareOf<OrganicN> First, ShareOf<OrganicN> Second, Coefficient At, Coefficient FirstAt, Coefficient SecondAt), ShareOf<OrganicN>> BetweenPoints { get; } = new(
        "release-between-points",
        "Release between two published points",
        "r = a + (b − a) × (x − p) / (q − p)",
        Citation.OurArithmetic,
        [
            new(new Symbol("a", "share at the first point", "%", 0, 100), x => x.First.Percent),
            new(new Symbol("b", "share at the second point", "%", 0, 100), x => x.Second.Percent),
            new(new Symbol("x", "day or soil temperature asked for", "days or °C"), x => x.At.Value),
            new(new Symbol("p", "day or soil temperature of the first point", "days or °C"), x => x.FirstAt.Value),
            new(new Symbol("q", "day or soil temperature of the second point", "days or °C"), x => x.SecondAt.Value),
        ],
        new(new Symbol("r", "share released", "%"), y => y.Percent),
        v => (ShareOf<OrganicN>.FromPercent(v[0]), ShareOf<OrganicN>.FromPercent(v[1]), new Coefficient(v[2]), new Coefficient(v[3]), new Coefficient(v[4])),
        x => ShareOf<OrganicN>.FromFraction(x.First.Fraction + ((x.Second.Fraction - x.First.Fraction) * (x.At.Value - x.FirstAt.Value) / (x.SecondAt.Value - x.FirstAt.Value))),
        "A straight line between two printed points; the publication draws none.");

    /// <summary>One dressing's part of the season's nitrogen, in the proportion that the guide prints.</summary>
    public static Formula<(MassPerArea Season, Coefficient Part, Coefficient AllParts), MassPerArea> Dressing { get; } = new(
        "nitrogen-dressing",
        "Nitrogen of one dressing",
        "D = N × p / s",
        Citation.OurArithmetic,
        [
            new(new Symbol("N", "nitrogen of the season", "lb/acre", 0), x => x.Season.PoundsPerAcre),
            new(new Symbol("p", "what the guide prints for this dressing", "lb/acre", 0), x => x.Part.Value),
            new(new Symbol("s", "what the guide prints for all dressings together", "lb/acre", 0.001), x => x.AllParts.Value),
        ],
        new(new Symbol("D", "nitrogen of this dressing", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), new Coefficient(v[1]), new Coefficient(v[2])),
        x => x.Season * (x.Part.Value / x.AllParts.Value),
        "The proportion is the guide's; no publication that was read works it for another total.");
}
