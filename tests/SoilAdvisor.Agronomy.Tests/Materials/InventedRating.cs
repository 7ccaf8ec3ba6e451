using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Materials;

/// <summary>Invented ratings: one class that holds everything, standing where the test wants it.</summary>
internal static class InventedRating
{
    private static readonly Citation Source = new("invented", null, Evidence.Ours);

    public static Rating Of(Analyte analyte, Standing standing) => new(
        "invented",
        new Reading(analyte, Amount.Measured(1), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Mehlich3), "line 2"),
        Amount.Measured(1),
        new RatingScale(
            analyte,
            new ScaleMethod(Extractant.Mehlich3, ScaleDetection.Any, null),
            ReportingUnit.MilligramsPerKilogram,
            null,
            [new RatingClass($"Class {standing}", standing, true, null, false, null, false, 0, 0, Source)]),
        0,
        null,
        []);
}
