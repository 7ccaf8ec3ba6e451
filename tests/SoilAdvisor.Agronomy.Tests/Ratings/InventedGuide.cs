using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Ratings;

/// <summary>An invented guide for tests of the mechanism. Its limits come from nowhere.</summary>
internal static class InventedGuide
{
    private static readonly Citation Source = new("invented", null, Evidence.Ours);

    /// <summary>Whole-number bins 0-25, 26-50, 51-100, above 100, plasma only.</summary>
    public static readonly Guide Bins = Of(new RatingScale(
        Analyte.P, new ScaleMethod(Extractant.Mehlich3, ScaleDetection.Icp, null), ReportingUnit.MilligramsPerKilogram, 0,
        [Class("Low", Standing.Below, 0, true, 25, true), Class("Medium", Standing.Below, 26, true, 50, true), Class("Optimum", Standing.Target, 51, true, 100, true), Class("Excessive", Standing.Stop, 101, true, null, false)]));

    /// <summary>Limits 30 and 50, both belonging to Optimum; detection not printed.</summary>
    public static readonly Guide Shared = Of(new RatingScale(
        Analyte.P, new ScaleMethod(Extractant.Mehlich3, ScaleDetection.NotStated, null), ReportingUnit.MilligramsPerKilogram, null,
        [Class("Below", Standing.Below, null, false, 30, false), Class("Optimum", Standing.Target, 30, true, 50, true), Class("Above", Standing.Above, 50, false, null, false)]));

    /// <summary>Potassium limits that rise by 2.5 mg/kg with each meq/100 g.</summary>
    public static readonly Guide ByCec = Of(new RatingScale(
        Analyte.K, new ScaleMethod(Extractant.AmmoniumAcetate, ScaleDetection.Any, null), ReportingUnit.MilligramsPerKilogram, null,
        [
            new RatingClass("Below critical", Standing.Below, true, null, false, 75, false, 0, 2.5m, Source),
            new RatingClass("Maintenance", Standing.Target, true, 75, true, 95, true, 2.5m, 2.5m, Source),
            new RatingClass("Above", Standing.Above, true, 95, false, null, false, 2.5m, 0, Source),
        ]));

    /// <summary>pH in water: below 6.0, 6.0 up to 6.5, from 6.5.</summary>
    public static readonly Guide Acidity = Of(new RatingScale(
        Analyte.Ph, new ScaleMethod(null, ScaleDetection.Any, Procedure.PhWater11), ReportingUnit.PhUnits, null,
        [Class("Low", Standing.Below, null, false, 6.0m, false), Class("Fair", Standing.Below, 6.0m, true, 6.5m, false), Class("Good", Standing.Target, 6.5m, true, null, false)]));

    public static SoilTest Test(params Reading[] readings) => new("s1", null, null, null, null, null, null, readings, []);

    public static Reading Phosphorus(Amount amount, Detection? detection = Detection.Icp, Extractant extractant = Extractant.Mehlich3) =>
        new(Analyte.P, amount, ReportingUnit.MilligramsPerKilogram, Method.Extracted(extractant, detection), "line 2");

    public static Guide Of(params RatingScale[] scales) => new("invented", "Invented guide", "Nobody", ["XX-YY"], "vegetables", "vegetables", Source, null, scales);

    public static RatingClass Class(string name, Standing standing, decimal? lower, bool lowerIncluded, decimal? upper, bool upperIncluded) =>
        new(name, standing, true, lower, lowerIncluded, upper, upperIncluded, 0, 0, Source);
}
