using System.Globalization;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Agronomy.YearsAhead;
using SoilAdvisor.Planning.Beds;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Planning.YearsAhead;

/// <summary>Compost for the structure of a bed: fixed after lime and before the other materials, so that what it brings counts.</summary>
internal static class BedStructure
{
    public static Answer<StructureDressing>? Of(
        Bed bed, string? region, Tables tables, IReadOnlyList<OfferedMaterial> offered, PhosphorusLimit phosphorus, IReadOnlyList<PlantingFloor> floors, BedLime lime, WorkingSheet? working)
    {
        if (bed.Structure is not { } asked)
        {
            return null;
        }

        working?.Section("Compost for structure");
        if (offered.FirstOrDefault(o => o.Material.Id == asked.Material) is not { } material)
        {
            return Answer<StructureDressing>.Refused(
                "structure-material-not-offered",
                $"{asked.Material} is not among the materials that this plan may use.",
                "Put it on your list of materials, with its analysis where a laboratory tested it.");
        }

        if (lime.Plan is null && material.Analysis.Share(Nutrient.CalciumCarbonate) > 0)
        {
            return Answer<StructureDressing>.Refused("structure-lime-unknown", $"{material.Material.Name} raises the pH, and no lime requirement could be computed.", "Give pH and buffer pH with the soil test.");
        }

        if (lime.Plan?.Chosen?.Offered.Material is { } stone && NeverTogether.Hold(stone, material.Material))
        {
            return Answer<StructureDressing>.Refused("structure-never-with-lime", $"{material.Material.Name} is never spread together with {stone.Name}, which this bed gets.", "Spread it in a season without lime.");
        }

        Rate<TotalP2O5>? removed = SeasonRemovals.OfPhosphate(bed.Plantings, working).TryGet(out var removal, out _) ? removal.Removed : null;
        TestMovement<TotalP2O5>? movement = bed.SoilTest.Of(Analyte.P)?.Method.Extractant is { } extractant && tables.TestMovements.OfPhosphorus(extractant, region).TryGet(out var moves, out _) ? moves : null;
        var left = Left(bed, phosphorus, floors, removed, lime);
        var cap = SeasonCap.Of(material, bed) is { } season ? season.Cap with { Most = season.Left } : null;
        return StructureDressings.Of(asked, material, new StructureLimits(left?.Most, left?.Reason, phosphorus.NoManureOrCompost, cap), removed, movement, working);
    }

    /// <summary>The dressing as something that is spread.</summary>
    public static MaterialApplication Application(StructureDressing dressing, Bed bed, WorkingSheet? working)
    {
        working?.Section($"{dressing.Offered.Material.Name} for structure");
        var perBed = AreaFormulas.RatePerBed.Of((dressing.Rate, bed.Area), working, Origin.From(Citation.OurArithmetic), Origin.Given(bed.AreaShown));
        var (offered, crop) = (dressing.Offered, bed.Plantings[0].Crop.Name);
        return new MaterialApplication(
            offered,
            0,
            dressing.Rate,
            perBed,
            VolumeMeasures.For(offered.Material, perBed),
            Costs.Of(offered, perBed),
            offered.WaitBeforeSowingDays == 0 ? $"At or before planting {crop}." : string.Create(CultureInfo.InvariantCulture, $"At least {offered.WaitBeforeSowingDays} days before planting {crop}."),
            bed.Plantings[0].Planted?.AddDays(-offered.WaitBeforeSowingDays),
            "structure of the soil");
    }

    // Where the guide asks for phosphate, the dressing may bring what is asked or what the harvests take, whichever is more; it is no way to build a soil up.
    private static (MassPerArea Most, string Reason)? Left(Bed bed, PhosphorusLimit phosphorus, IReadOnlyList<PlantingFloor> floors, Rate<TotalP2O5>? removed, BedLime lime)
    {
        var spread = lime.Supplied[Nutrient.TotalP2O5];
        if (phosphorus.Most is { } most)
        {
            return (most - spread - SpreadSinceSample.Of(bed)[Nutrient.TotalP2O5], phosphorus.Reason!);
        }

        var needed = floors.Where(f => f.Nutrient == Nutrient.AvailableP2O5).Select(f => f.High).Aggregate(default(MassPerArea), (a, b) => a + b);
        return needed.IsZero && removed is null
            ? null
            : (MassPerArea.Larger(needed, removed?.Amount ?? default) - spread, "a dressing for structure brings no more than the crops need or the harvests take (our limit)");
    }
}
