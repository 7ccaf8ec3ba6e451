using System.Globalization;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.Beds;

/// <summary>Which materials may be spread for which planting of a bed, and how much at most. Says why one that was listed may not.</summary>
internal sealed class Spreadable
{
    // 205.602(h): at most a fifth of the crop's nitrogen from mined sodium nitrate. Kept although its lapse is disputed: the stricter side.
    private const string SodiumNitrate = "sodium-nitrate";
    private const double SodiumNitrateShareOfNitrogen = 0.2;

    private readonly Bed bed;
    private readonly BedLime lime;
    private readonly PhosphorusLimit phosphorus;
    private readonly IReadOnlyList<PlantingFloor> floors;
    private readonly IReadOnlyList<Requirement> requirements;
    private readonly List<string> reasons = [];

    public Spreadable(Bed bed, BedLime lime, PhosphorusLimit phosphorus, IReadOnlyList<PlantingFloor> floors, IReadOnlyList<Requirement> requirements) =>
        (this.bed, this.lime, this.phosphorus, this.floors, this.requirements) = (bed, lime, phosphorus, floors, requirements);

    /// <summary>Why listed materials were left out, in sentences.</summary>
    public IReadOnlyList<string> Reasons => reasons;

    /// <summary>Decisions for the materials that can serve a floor.</summary>
    /// <param name="offered">The materials.</param>
    public IReadOnlyList<MaterialVariable> Of(IReadOnlyList<OfferedMaterial> offered)
    {
        var variables = new List<MaterialVariable>();
        for (var planting = 0; planting < bed.Plantings.Count; planting++)
        {
            foreach (var material in offered)
            {
                if (Serves(material, planting) && WhyNot(material, planting) is var why && why is null)
                {
                    variables.Add(Bounded(material, planting));
                }
                else if (Serves(material, planting) && material.Listed)
                {
                    reasons.Add(WhyNot(material, planting)!);
                }
            }
        }

        return variables;
    }

    private bool Serves(OfferedMaterial material, int planting) =>
        requirements.Any(r => r.AsksForSomething && r.Counts(planting) && material.Analysis.Share(r.Nutrient) > 0);

    private MaterialVariable Bounded(OfferedMaterial material, int planting)
    {
        var most = MostOf(material, planting);
        return SeasonCap.Of(material, bed) is { } cap && cap.Left < most
            ? new MaterialVariable(material, planting, cap.Left) { Cap = cap.Cap }
            : new MaterialVariable(material, planting, most);
    }

    private MassPerArea MostOf(OfferedMaterial material, int planting)
    {
        if (material.Material.Id != SodiumNitrate || material.Analysis.Share(Nutrient.AvailableN) is not (> 0 and var share))
        {
            return material.LargestSingleRate;
        }

        var nitrogen = floors.FirstOrDefault(f => f.Nutrient == Nutrient.AvailableN && f.PlantingIndex == planting)?.Low ?? default;
        var fifth = nitrogen * (SodiumNitrateShareOfNitrogen / share);
        return fifth < material.LargestSingleRate ? fifth : material.LargestSingleRate;
    }

    private string? WhyNot(OfferedMaterial offered, int planting)
    {
        var material = offered.Material;
        if (phosphorus.NoManureOrCompost && (material.Manure != ManureKind.None || material.Category is "manure" or "processed-manure" or "compost"))
        {
            return $"{material.Name} is left out: soil phosphorus is at the guide's stop limit, and manure and compost bring more.";
        }

        if (lime.Plan is null && offered.Analysis.Share(Nutrient.CalciumCarbonate) > 0)
        {
            return $"{material.Name} is left out: it raises the pH, and no lime requirement could be computed.";
        }

        if (material.Category == "lime" && (!offered.Listed || lime.Plan?.Chosen?.Offered.Material.Id == material.Id))
        {
            return $"{material.Name} is used as lime on this bed and not for nutrients beside.";
        }

        if (lime.Plan?.Chosen?.Offered.Material is { } stone && NeverTogether.Hold(stone, material) && (planting == 0 || material.Manure == ManureKind.None))
        {
            return $"{material.Name} is left out: it is never spread together with {stone.Name}, which this bed gets.";
        }

        return material.Manure == ManureKind.Raw ? WhyNotRaw(offered, planting) : null;
    }

    private string? WhyNotRaw(OfferedMaterial manure, int from)
    {
        if (bed.Plantings[from].Planted is not { } planted)
        {
            return $"{manure.Material.Name} is left out: raw manure needs a planting date, so that the days to the first harvest can be counted.";
        }

        var spread = planted.AddDays(-manure.WaitBeforeSowingDays);
        for (var i = from; i < bed.Plantings.Count; i++)
        {
            var planting = bed.Plantings[i];
            var days = (planting.SoilContact ?? planting.Crop.SoilContact) == SoilContact.NoContact ? 90 : 120;
            if (planting.FirstHarvest is not { } harvest)
            {
                return $"{manure.Material.Name} is left out: the first harvest of {planting.Crop.Name} is not known, and raw manure needs {days} days before it.";
            }

            if (harvest.DayNumber - spread.DayNumber < days)
            {
                return string.Create(CultureInfo.InvariantCulture, $"{manure.Material.Name} is left out: spread on {spread:yyyy-MM-dd} it would lie {harvest.DayNumber - spread.DayNumber} days before the first harvest of {planting.Crop.Name}; raw manure needs {days}.");
            }
        }

        return null;
    }
}
