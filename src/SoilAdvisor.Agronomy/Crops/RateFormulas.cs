using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>Published equations from a soil test to a rate.</summary>
public static class RateFormulas
{
    /// <summary>The parabola of North Carolina, read only down to its first zero or its lowest point.</summary>
    public static Formula<(Coefficient A, Coefficient B, Coefficient C, SoilIndex<NorthCarolinaTestIndex> Index), Coefficient> Quadratic { get; } = new(
        "quadratic-rate-of-test-index",
        "Rate from the soil test index, North Carolina",
        "R = max(a × min(I, b / (2 × a))² − b × min(I, b / (2 × a)) + c, 0)",
        new Citation("nc-24", "Table 2.4", Evidence.Seen),
        [
            new(new Symbol("a", "coefficient of the square", "per index²", 0.0001), x => x.A.Value),
            new(new Symbol("b", "coefficient of the index", "per index", 0), x => x.B.Value),
            new(new Symbol("c", "rate at an index of 0", "lb/acre", 0), x => x.C.Value),
            new(new Symbol("I", "soil test index", "index", 0), x => x.Index.Value),
        ],
        new(new Symbol("R", "P2O5 or K2O, in the unit of c", "lb/acre"), y => y.Value),
        v => (new Coefficient(v[0]), new Coefficient(v[1]), new Coefficient(v[2]), new SoilIndex<NorthCarolinaTestIndex>(v[3])),
        x =>
        {
            var index = Math.Min(x.Index.Value, x.B.Value / (2 * x.A.Value));
            return new Coefficient(Math.Max((x.A.Value * index * index) - (x.B.Value * index) + x.C.Value, 0));
        },
        "The table prints coefficients without a worked rate.");

    /// <summary>Nitrogen to sidedress corn by the late-spring nitrate test of Iowa; nothing at or above the critical level.</summary>
    public static Formula<(SoilConcentration Critical, SoilConcentration Nitrate), Rate<TotalN>> LateSpringNitrate { get; } = new(
        "late-spring-nitrate-iowa",
        "Nitrogen to sidedress corn, late-spring nitrate test, Iowa",
        "N = max(8 × (C − NO3N), 0)",
        new Citation("ia-lsnt", null, Evidence.Seen),
        [
            new(new Symbol("C", "critical level for the spring", "mg/kg", 0), x => x.Critical.MilligramsPerKilogram),
            new(new Symbol("NO3N", "nitrate-N, 0 to 12 in, just before sidedressing", "mg/kg", 0), x => x.Nitrate.MilligramsPerKilogram),
        ],
        new(new Symbol("N", "nitrogen to sidedress", "lb/acre"), y => y.PoundsPerAcre),
        v => (SoilConcentration.FromMilligramsPerKilogram(v[0]), SoilConcentration.FromMilligramsPerKilogram(v[1])),
        x => Rate<TotalN>.FromPoundsPerAcre(Math.Max(8 * (x.Critical.MilligramsPerKilogram - x.Nitrate.MilligramsPerKilogram), 0)));
}
