using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Brings a reported pH to the water scale, by published relations only, and says when the result is an estimate.</summary>
public static class PhScales
{
    private const string Georgia = "US-GA";

    private static readonly string Ask = "Ask the laboratory for the pH in water, one part to one.";

    /// <summary>The pH in water. Refuses a test without a pH, or with a pH that is only known to lie above or below a number.</summary>
    /// <param name="test">The soil test.</param>
    /// <param name="region">ISO 3166-2 code of the farm: Georgia has a convention of its own; null when not known.</param>
    /// <param name="working">Receives the conversion; null for none.</param>
    public static Answer<WaterPh> InWater(SoilTest test, string? region, WorkingSheet? working)
    {
        if (test.Of(Analyte.Ph) is not { Amount.Kind: not AmountKind.Missing } reading)
        {
            return Answer<WaterPh>.Refused("ph-missing", "The soil test has no pH, so nobody can say whether lime is needed.", "Ask the laboratory for the pH in water and the buffer pH with the buffer's name.");
        }

        var origin = Origin.Given(reading.Where);
        var value = (double)reading.Amount.Number;
        if (reading.Amount.Kind != AmountKind.Measured)
        {
            return IsSalt(reading.Method.Procedure) || reading.Amount.Kind == AmountKind.Below
                ? Answer<WaterPh>.Refused("ph-open", $"The pH is reported as {reading.Amount}; a lime requirement needs the number.", "Ask the laboratory for the measured pH.")
                : Answer<WaterPh>.Given(new WaterPh(reading.Amount.Number, origin, false, []));
        }

        return reading.Method.Procedure switch
        {
            null => AsItStands("ph-in-water", "The report does not say how pH was measured; it is taken as pH in water."),
            Procedure.PhWater12 => AsItStands("ph-dilution", "The pH was measured in two parts of water; no published relation from that to one part is held, so it is taken as it stands. More water reads a little higher."),
            Procedure.PhCalciumChloride when region == Georgia => Estimate(PhScaleFormulas.WaterFromCalciumChlorideGeorgia.Of(new(value), working, origin), "Georgia's convention (+ 0.6)", "that prints no error", PhScaleFormulas.WaterFromCalciumChlorideGeorgia.Source),
            Procedure.PhCalciumChloride => Estimate(PhScaleFormulas.WaterFromCalciumChloride.Of(new(value), working, origin), "a relation found on soils of New South Wales", "that prints no error", PhScaleFormulas.WaterFromCalciumChloride.Source),
            Procedure.PhPotassiumChloride when value is >= 2 and <= 9 => FromDilute(PhScaleFormulas.DiluteWaterFromPotassiumChloride.Of(new(value), working, origin), "soils of Poland and then of the United States"),
            Procedure.PhWater125 => FromDilute(PhScaleFormulas.DiluteWaterFromHalfDilute.Of(new(value), working, origin), "soils of Poland and then of the United States"),
            Procedure.PhWater15 => FromDilute(new(value), "soils of the United States"),
            Procedure.PhPotassiumChloride => Answer<WaterPh>.Refused("salt-ph", $"The pH in potassium chloride, {reading.Amount}, lies outside the published relation.", Ask),
            _ => Answer<WaterPh>.Given(new WaterPh(reading.Amount.Number, origin, false, [])),
        };

        Answer<WaterPh> AsItStands(string code, string text) => Answer<WaterPh>.Given(new WaterPh(reading.Amount.Number, origin, false, [new Assumption(code, text, Citation.CommonPractice)]));

        Answer<WaterPh> FromDilute(ScaledPh<DiluteWaterScale> dilute, string soils)
        {
            var from = reading.Method.Procedure == Procedure.PhWater15 ? origin : Origin.Line(working?.LastLine ?? 0);
            return Estimate(PhScaleFormulas.WaterFromDilute.Of(dilute, working, from), $"a relation found on {soils}", "whose error is 0.44", PhScaleFormulas.WaterFromDilute.Source);
        }

        Answer<WaterPh> Estimate(SoilPh water, string by, string error, Citation source)
        {
            var rounded = Math.Round((decimal)water.Value, 2);
            var said = new Assumption(
                "ph-estimated",
                Invariant($"The pH {reading.Amount.Number} ({Words.ProceduresOf(Analyte.Ph)!.IdOf(reading.Method.Procedure!.Value)}) is estimated as {rounded} in water by {by}, {error}. {Ask}"),
                source);
            return Answer<WaterPh>.Given(new WaterPh(rounded, Origin.Line(working?.LastLine ?? 0), true, [said]));
        }
    }

    private static bool IsSalt(Procedure? procedure) => procedure is Procedure.PhCalciumChloride or Procedure.PhPotassiumChloride;
}
