using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>Rates that bring as much phosphate as the harvests take away: total phosphate, because the soil keeps all of it.</summary>
public static class HoldRates
{
    // A material with less counts as one without phosphorus. Ours.
    private const double LeastShare = 0.002;

    /// <summary>The rate for each material that carries phosphorus.</summary>
    /// <param name="offered">The materials.</param>
    /// <param name="removed">Phosphate that the harvests of a year take away.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    public static IReadOnlyList<HoldRate> Of(IEnumerable<OfferedMaterial> offered, Rate<TotalP2O5> removed, WorkingSheet? working = null) =>
        [.. offered.Where(o => High(o, Nutrient.TotalP2O5) >= LeastShare && o.Material.Category != "lime").Select(o => Of(o, removed, working))];

    private static HoldRate Of(OfferedMaterial offered, Rate<TotalP2O5> removed, WorkingSheet? working)
    {
        working?.Section($"Rate of {offered.Material.Name} at which phosphorus stops climbing");
        var (poor, rich) = (offered.Analysis.Share(Nutrient.TotalP2O5), High(offered, Nutrient.TotalP2O5));
        var phosphate = Source(offered, Nutrient.TotalP2O5);
        var rate = MaterialFormulas.MaterialForNutrient.Of((removed.Amount, MassShare.FromFraction((poor + rich) / 2)), working, Origin.Given("what the harvests take"), Origin.From(phosphate));
        var nitrogen = MaterialFormulas.NutrientFromMaterial.Of((rate, MassShare.FromFraction(offered.Analysis.Share(Nutrient.AvailableN))), working, Origin.Line(working?.LastLine ?? 0), Origin.From(Source(offered, Nutrient.AvailableN)));
        return new HoldRate(
            offered,
            removed.Amount * (1 / rich),
            rate,
            removed.Amount * (1 / Math.Max(poor, LeastShare / 10)),
            nitrogen,
            rate * High(offered, Nutrient.AvailableN),
            rate > offered.LargestSingleRate);
    }

    private static double High(OfferedMaterial offered, Nutrient nutrient) => Math.Max(offered.Analysis.Share(nutrient), offered.Analysis.High.GetValueOrDefault(nutrient));

    private static Citation Source(OfferedMaterial offered, Nutrient nutrient) =>
        offered.Analysis.Sources.TryGetValue(nutrient, out var sources) && sources.Count > 0 ? sources[0] : offered.Material.Source;
}
