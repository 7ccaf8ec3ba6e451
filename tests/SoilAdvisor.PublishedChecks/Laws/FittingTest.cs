using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.PublishedChecks.Laws;

/// <summary>A soil test that a scale applies to: everything the scale asks of the sample, and the value to be rated as the first reading.</summary>
internal static class FittingTest
{
    public static SoilTest For(RatingScale scale, decimal value, decimal cec)
    {
        Detection? detection = scale.Method.Detection switch
        {
            ScaleDetection.Icp => Detection.Icp,
            ScaleDetection.Colorimetric => Detection.Colorimetric,
            _ => null,
        };
        var rated = new Reading(scale.Analyte, Amount.Measured(value), scale.Unit, new Method(scale.Method.Extractant, detection, scale.Method.Procedure, Basis.Element), "law");
        var others = scale.Conditions.Select(c => c.Analyte)
            .Append(Analyte.CationExchangeCapacity)
            .Where(a => a != scale.Analyte)
            .Distinct()
            .Select(a => Other(a, scale, cec));
        return new SoilTest("law", null, null, scale.Depth, scale.SoilGroups.Count > 0 ? scale.SoilGroups[0] : null, null, null, [rated, .. others], []) { Timing = scale.Timing };
    }

    private static Reading Other(Analyte analyte, RatingScale scale, decimal cec)
    {
        var asked = scale.Conditions.Where(c => c.Analyte == analyte).ToList();
        var unit = asked.Count > 0 ? asked[0].UnitOn(scale) : ReportingUnit.MilliequivalentsPer100Grams;
        var method = Words.ProceduresOf(analyte) is null ? new Method(scale.Method.Extractant, null, null, Basis.Element) : Method.By(null);
        return new Reading(analyte, Amount.Measured(asked.Aggregate(analyte == Analyte.CationExchangeCapacity ? cec : 0m, Into)), unit, method, "law");
    }

    private static decimal Into(decimal value, ScaleCondition span) => span switch
    {
        { From: { } from } when value <= from => from + 0.1m,
        { To: { } to } when value >= to => to - 0.1m,
        _ => value,
    };
}
