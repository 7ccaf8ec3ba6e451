using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;
using UnitsNet;

namespace SoilAdvisor.ReferenceTables.Crops;

/// <summary>From checked tables to rates that follow a test value directly: parabolas, and tables of a nitrate test.</summary>
internal static class RateEquationBuilding
{
    public static IEnumerable<QuadraticRate> Quadratics(TableFolder folder) => folder.RowsOf(RowKinds.QuadraticRates).Select(row => new QuadraticRate(
        row.Needed("id"), row.NeededNumber("a"), row.NeededNumber("b"), row.NeededNumber("c"), row.Needed("unit"), row.Number("tolerance"), row.Citation()));

    public static IEnumerable<SidedressTable> SidedressTables(TableFolder folder) => folder.RowsOf(RowKinds.SidedressRates)
        .GroupBy(row => (Crop: row.Needed("crop"), Manured: row.IsYes("manured")))
        .Select(group => new SidedressTable(
            group.Key.Crop,
            group.Key.Manured,
            new RatingScale(
                Analyte.NitrateN,
                new ScaleMethod(null, ScaleDetection.Any, null),
                ReportingUnit.MilligramsPerKilogram,
                0,
                [.. group.Select(Span)])
            {
                Timing = SampleTiming.BeforeSidedressing,
                Depth = new SampleDepth(Length.FromInches((double)group.First().NeededNumber("depth_from")), Length.FromInches((double)group.First().NeededNumber("depth_to"))),
            },
            [.. group.Select(row => Agronomy.Quantities.MassPerArea.FromPoundsPerAcre((double)row.NeededNumber("rate")))],
            group.First()["how"]));

    private static RatingClass Span(TableRow row) => new(
        row["nitrate_to"] is { } to ? $"{row["nitrate_from"]} to {to}" : $"{row["nitrate_from"]} and more",
        Standing.Information,
        true,
        row.NeededNumber("nitrate_from"),
        true,
        row.Number("nitrate_to"),
        true,
        0,
        0,
        row.Citation());
}
