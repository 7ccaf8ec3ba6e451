using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Tests.Ratings;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Certainty;

/// <summary>Invented spreads and scales for tests of the mechanism. Their figures come from nowhere.</summary>
internal static class InventedSpread
{
    private static readonly Citation Source = new("invented", null, Evidence.Ours);

    /// <summary>P: composite 10 %, laboratory 5 %, field 60 %. pH: 0.1. Organic matter: 0.3 points in the laboratory, 17 % in the field.</summary>
    public static readonly Variability All = new(
    [
        Row(Analyte.P, SpreadKind.SamplingAndAnalysis, SpreadUse.Composite, SpreadMeasure.CoefficientOfVariation, 10),
        Row(Analyte.P, SpreadKind.LaboratoryRepeat, SpreadUse.Laboratory, SpreadMeasure.CoefficientOfVariation, 5),
        Row(Analyte.P, SpreadKind.Field, SpreadUse.Cores, SpreadMeasure.CoefficientOfVariation, 60),
        Row(Analyte.P, SpreadKind.BetweenLaboratories, SpreadUse.TwoLaboratories, SpreadMeasure.CoefficientOfVariation, 20),
        Row(Analyte.K, SpreadKind.SamplingAndAnalysis, SpreadUse.Composite, SpreadMeasure.CoefficientOfVariation, 10),
        Row(Analyte.K, SpreadKind.Season, SpreadUse.TwoSeasons, SpreadMeasure.Change, null) with { Low = 10, High = 25, Unit = ReportingUnit.MilligramsPerKilogram },
        Row(Analyte.Ph, SpreadKind.SamplingAndAnalysis, SpreadUse.Composite, SpreadMeasure.StandardDeviation, 0.1m),
        Row(Analyte.OrganicMatter, SpreadKind.LaboratoryRepeat, SpreadUse.Laboratory, SpreadMeasure.StandardDeviation, 0.3m),
        Row(Analyte.OrganicMatter, SpreadKind.Field, SpreadUse.Cores, SpreadMeasure.CoefficientOfVariation, 17),
    ]);

    public static ResultSpread Relative(double percent) => new(true, CoefficientOfVariation.FromPercent(percent), default, null, []);

    public static ResultSpread OfPh(double units) => new(false, default, PhSpread.FromPhUnits(units), null, []);

    public static Rating Phosphorus(Guide guide, Amount amount)
    {
        var reading = InventedGuide.Phosphorus(amount);
        return guide.Rate(InventedGuide.Test(reading), reading, default).Value;
    }

    public static Rating Ph(Amount amount)
    {
        var reading = new Reading(Analyte.Ph, amount, ReportingUnit.PhUnits, Method.By(Procedure.PhWater11), "line 3");
        return InventedGuide.Acidity.Rate(InventedGuide.Test(reading), reading, default).Value;
    }

    private static Spread Row(Analyte analyte, SpreadKind kind, SpreadUse use, SpreadMeasure measure, decimal? value) =>
        new(analyte, null, kind, use, false, measure, value, null, null, measure == SpreadMeasure.StandardDeviation && analyte == Analyte.Ph ? ReportingUnit.PhUnits : ReportingUnit.Percent, Source, null);
}
