using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Tests.Acidity;

/// <summary>Ground for tests of the mechanism, with invented tables that hold one index and two dose limits.</summary>
internal static class InventedGround
{
    private static readonly Citation Source = new("invented", null, Evidence.Seen);

    public static LimeIndex Index(string id, string formula, bool byClass, bool moisture, string unit, double whole, EffectiveLimeIndex counts, string source = "invented-index") =>
        new(id, $"Index {id}", [], formula, byClass, moisture, unit, whole, null, counts, new Citation(source, null, Evidence.Seen), null);

    public static DoseLimit Garden { get; } = new("garden", "Invented garden rule", null, false, "beds", [], 10, "lb/100-sq-ft", 6, 6, Source, null);

    public static DoseLimit Surface { get; } = new("surface", "Invented surface rule", null, true, "field", [], 2, "ton/acre", 24, 36, Source, null);

    public static LimingTables Tables(params LimeIndex[] indexes) => new([], new Dictionary<int, decimal>(), indexes, [Garden, Surface], [], [], []);

    public static LimeGround Of(Rating? magnesium = null, Area? area = null, LimingTables? tables = null) => new(
        tables ?? Tables(),
        magnesium is null ? MagnesiumTest.None : MagnesiumTest.For(InventedLime.Soil(6), null, [], magnesium),
        [],
        null,
        null,
        false,
        null,
        area,
        null);
}
