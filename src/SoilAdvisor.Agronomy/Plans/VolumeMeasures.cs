using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>
/// Turns a mass into cups, pints, gallons, cubic feet or cubic yards, but only where one density is published. Weighing is never wrong;
/// a scoop can be.
/// </summary>
public static class VolumeMeasures
{
    // Where two publications differ by more than this, a volume would promise a precision that nobody has (our limit).
    private const double MostDisagreement = 1.25;

    /// <summary>
    /// The volume, or null: weigh it. Null for boron and the other micronutrients, for prohibited materials, where no density is published or
    /// only a range is, where the density is common practice or our own, and where published densities differ by more than a quarter.
    /// </summary>
    /// <param name="material">The material.</param>
    /// <param name="mass">The mass to measure; zero or more.</param>
    public static VolumeMeasure? For(Material material, Mass mass)
    {
        if (DensityOf(material) is not { } density)
        {
            return null;
        }

        var volume = Volume.FromCubicMeters(mass.Kilograms / density.Density.KilogramsPerCubicMeter);
        var (value, unit) = Sized(volume, material.ValueOf("bulk-density")!.Unit == "lb/gal");
        return new VolumeMeasure(value, unit, density.Source);
    }

    /// <summary>The density that a volume may be measured with; null: weigh it, for the reasons above.</summary>
    /// <param name="material">The material.</param>
    public static BulkDensity? DensityOf(Material material)
    {
        if (material.Category == "micronutrient" || material.Status == OrganicStatus.Prohibited)
        {
            return null;
        }

        var published = material.Values
            .Where(v => v.Property == "bulk-density" && v.Value > 0 && v.Source.Evidence is Evidence.Seen or Evidence.FromMemory)
            .ToList();
        if (published.Count == 0 || !ReferenceEquals(published[0], material.ValueOf("bulk-density")))
        {
            return null;
        }

        var densities = published.Select(v => Of(v).KilogramsPerCubicMeter).ToList();
        // Unit conversion may leave a last bit above the limit.
        return densities.Max() > densities.Min() * MostDisagreement * (1 + 1e-9) ? null : new BulkDensity(Of(published[0]), published[0].Source);
    }

    private static Density Of(MaterialValue row)
    {
        var value = (double)row.Value!.Value;
        return row.Unit switch
        {
            "lb/cubic-yard" => Per(value, Volume.FromCubicYards(1)),
            "lb/cubic-foot" => Per(value, Volume.FromCubicFeet(1)),
            "lb/gal" => Per(value, Volume.FromUsGallons(1)),
            "lb/pint" => Per(value, Volume.FromUsPints(1)),
            "lb/cup" => Per(value, Volume.FromUsCustomaryCups(1)),
            "kg/m3" => Density.FromKilogramsPerCubicMeter(value),
            _ => throw new ArgumentOutOfRangeException(nameof(row), row.Unit, "Not a unit of bulk density that the tables know."),
        };
    }

    private static Density Per(double pounds, Volume volume) =>
        Density.FromKilogramsPerCubicMeter(Mass.FromPounds(pounds).Kilograms / volume.CubicMeters);

    private static (double Value, string Unit) Sized(Volume volume, bool liquid) => volume switch
    {
        _ when volume.UsCustomaryCups < 4 => (volume.UsCustomaryCups, "cup"),
        _ when volume.UsPints < 16 => (volume.UsPints, "pint"),
        _ when liquid => (volume.UsGallons, "gal"),
        _ when volume.CubicFeet < 27 => (volume.CubicFeet, "cubic-foot"),
        _ => (volume.CubicYards, "cubic-yard"),
    };
}
