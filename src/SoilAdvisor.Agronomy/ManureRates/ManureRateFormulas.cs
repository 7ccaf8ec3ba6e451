using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.ManureRates;

/// <summary>
/// A manure spread for one nutrient brings the other along. Worked for nitrogen, phosphate runs over; worked for phosphate, nitrogen runs
/// short. Tons are short tons of manure as it is spread.
/// </summary>
public static class ManureRateFormulas
{
    private const double PoundsInShortTon = 2000;

    private static readonly Citation Montana = new("mt-cnmp", null, Evidence.Seen);

    /// <summary>Manure for the nitrogen of a crop.</summary>
    public static Formula<(Rate<AvailableN> Need, Rate<AvailableN> Credits, MassShare Available), MassPerArea> ByNitrogen { get; } = new(
        "manure-rate-by-nitrogen",
        "Manure that supplies the nitrogen",
        "R = (N − K) / a",
        Montana,
        [
            new(new Symbol("N", "nitrogen needed", "lb/acre", 0), x => x.Need.PoundsPerAcre),
            new(new Symbol("K", "nitrogen credits", "lb/acre", 0), x => x.Credits.PoundsPerAcre),
            new(new Symbol("a", "plant-available nitrogen of the manure", "lb/ton", 0.01, 2000), x => x.Available.PoundsPerShortTon),
        ],
        new(new Symbol("R", "manure", "ton/acre"), Tons),
        v => (Rate<AvailableN>.FromPoundsPerAcre(v[0]), Rate<AvailableN>.FromPoundsPerAcre(v[1]), MassShare.FromPoundsPerShortTon(v[2])),
        x => Needed((x.Need - x.Credits).Amount, x.Available));

    /// <summary>Manure for the phosphate of a crop.</summary>
    public static Formula<(Rate<TotalP2O5> Need, MassShare Total), MassPerArea> ByPhosphate { get; } = new(
        "manure-rate-by-phosphate",
        "Manure that supplies the phosphate",
        "R = P / p",
        Montana,
        [
            new(new Symbol("P", "phosphate (P2O5) needed", "lb/acre", 0), x => x.Need.PoundsPerAcre),
            new(new Symbol("p", "phosphate (total P2O5) of the manure", "lb/ton", 0.01, 2000), x => x.Total.PoundsPerShortTon),
        ],
        new(new Symbol("R", "manure", "ton/acre"), Tons),
        v => (Rate<TotalP2O5>.FromPoundsPerAcre(v[0]), MassShare.FromPoundsPerShortTon(v[1])),
        x => Needed(x.Need.Amount, x.Total));

    /// <summary>Phosphate above the need when a manure is spread for nitrogen; below zero where it falls short.</summary>
    public static Formula<(MassPerArea Manure, MassShare Total, Rate<TotalP2O5> Need), Rate<TotalP2O5>> PhosphateOver { get; } = new(
        "manure-phosphate-over",
        "Phosphate above the need, at a rate of manure",
        "O = R × p − P",
        Citation.OurArithmetic,
        [
            new(new Symbol("R", "manure", "ton/acre", 0), x => Tons(x.Manure)),
            new(new Symbol("p", "phosphate (total P2O5) of the manure", "lb/ton", 0, 2000), x => x.Total.PoundsPerShortTon),
            new(new Symbol("P", "phosphate (P2O5) needed", "lb/acre", 0), x => x.Need.PoundsPerAcre),
        ],
        new(new Symbol("O", "phosphate above the need", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0] * PoundsInShortTon), MassShare.FromPoundsPerShortTon(v[1]), Rate<TotalP2O5>.FromPoundsPerAcre(v[2])),
        x => new Rate<TotalP2O5>(x.Total.In(x.Manure)) - x.Need,
        "A product and a difference; the publication works both rates and leaves this sum to the reader.");

    /// <summary>Nitrogen still to come from elsewhere when a manure is spread for phosphate; below zero where it runs over.</summary>
    public static Formula<(Rate<AvailableN> Need, Rate<AvailableN> Credits, MassPerArea Manure, MassShare Available), Rate<AvailableN>> NitrogenShort { get; } = new(
        "manure-nitrogen-short",
        "Nitrogen still to supply, at a rate of manure",
        "S = N − K − R × a",
        Citation.OurArithmetic,
        [
            new(new Symbol("N", "nitrogen needed", "lb/acre", 0), x => x.Need.PoundsPerAcre),
            new(new Symbol("K", "nitrogen credits", "lb/acre", 0), x => x.Credits.PoundsPerAcre),
            new(new Symbol("R", "manure", "ton/acre", 0), x => Tons(x.Manure)),
            new(new Symbol("a", "plant-available nitrogen of the manure", "lb/ton", 0, 2000), x => x.Available.PoundsPerShortTon),
        ],
        new(new Symbol("S", "nitrogen still to supply", "lb/acre"), y => y.PoundsPerAcre),
        v => (Rate<AvailableN>.FromPoundsPerAcre(v[0]), Rate<AvailableN>.FromPoundsPerAcre(v[1]), MassPerArea.FromPoundsPerAcre(v[2] * PoundsInShortTon), MassShare.FromPoundsPerShortTon(v[3])),
        x => x.Need - x.Credits - new Rate<AvailableN>(x.Available.In(x.Manure)),
        "A product and a difference; the publication works both rates and leaves this sum to the reader.");

    // A negative rate means that the credits already cover the need.
    private static MassPerArea Needed(MassPerArea wanted, MassShare content) => wanted * (1 / content.Fraction);

    private static double Tons(MassPerArea manure) => manure.PoundsPerAcre / PoundsInShortTon;
}
