using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Materials;

/// <summary>Invented materials for tests of the mechanism. Their figures come from nowhere.</summary>
internal static class InventedMaterial
{
    public static readonly Citation Source = new("invented", null, Evidence.Seen);

    public static Material Of(string id, string category, params MaterialValue[] values) => new(
        id, id, category, "as-sold", ManureKind.None, OrganicStatus.Allowed, "205.203(d)(2)", true, [], values, [], Source, null);

    public static MaterialValue Figure(string property, decimal? value, string unit = "%", decimal? low = null, decimal? high = null, Evidence evidence = Evidence.Seen) =>
        new(property, value, low, high, unit, new Citation("invented", property, evidence), null);

    public static readonly Material Meal = Of(
        "meal",
        "plant-meal",
        Figure("total-nitrogen", 4),
        Figure("total-p2o5", 3),
        Figure("k2o", 2),
        Figure("available-nitrogen-share", 50, low: 50, high: 75),
        Figure("available-p2o5-share", 40, low: 40, high: 60),
        Figure("k2o-available-share", 100),
        Figure("largest-single-rate", 1500, "lb/acre"),
        Figure("wait-before-sowing", 14, "days"));

    public static readonly Material DryCompost = Of(
        "dry-compost",
        "compost",
        Figure("total-nitrogen", 2),
        Figure("total-p2o5", 1),
        Figure("k2o", 1),
        Figure("available-nitrogen-share", 10),
        Figure("available-p2o5-share", 50),
        Figure("k2o-available-share", 100),
        Figure("moisture", 40, low: 30, high: 50)) with { Basis = "dry" };

    public static readonly Material Rock = Of(
        "rock",
        "mineral",
        Figure("total-nitrogen", 0),
        Figure("total-p2o5", 30),
        Figure("available-p2o5", 3, low: 2, high: 4),
        Figure("k2o", 0),
        Figure("available-p2o5-share", 10),
        Figure("usable-below-ph", 6, "pH"));

    public static MaterialAnalysis Analysis(Material material, decimal? soilPh = null) => MaterialAnalyses.For(material, soilPh, null).Value;

    public static OfferedMaterial Offered(Material material, decimal? pricePerKilogram = null, bool listed = true)
    {
        var complete = material.ValueOf("largest-single-rate") is null
            ? material with { Values = [.. material.Values, Figure("largest-single-rate", 4356, "lb/acre"), Figure("wait-before-sowing", 0, "days")] }
            : material;
        var price = pricePerKilogram is { } value ? new Money(value, "USD") : (Money?)null;
        return OfferedMaterials.For(complete, Analysis(complete), price, UnitsNet.Mass.FromKilograms(1), null, listed).Value;
    }
}
