using System.Globalization;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>
/// The spread of one result. Where the number of cores is known: the laboratory's repeat and the field's variation over the root of the cores.
/// Where it is not: the spread of routine composites, which already holds both. Never the two together, which would count the sampling twice.
/// </summary>
public static class ResultSpreads
{
    /// <summary>Spread of a result as reported.</summary>
    /// <param name="variability">The published spreads.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="amount">Its amount, in any unit of the same test.</param>
    /// <param name="cores">Cores in the composite, 1 or more; null when not known.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    /// <returns>The spread, or a refusal where none is published.</returns>
    public static Answer<ResultSpread> Of(Variability variability, Reading reading, Amount amount, int? cores, WorkingSheet? working = null)
    {
        var (analyte, extractant) = (reading.Analyte, reading.Method.Extractant);
        if (cores is > 0 && !IsPh(analyte)
            && variability.For(analyte, extractant, SpreadUse.Laboratory) is { } laboratory
            && variability.For(analyte, extractant, SpreadUse.Cores) is { } field)
        {
            return OfCores(laboratory, field, amount, cores.Value, working);
        }

        if (variability.For(analyte, extractant, SpreadUse.Composite) is not { Value: { } value } composite)
        {
            var name = Words.Analytes.IdOf(analyte);
            return Answer<ResultSpread>.Refused(
                "spread-not-known",
                $"No published figure says how far a {name} result of one sample may lie from the truth, so no probability is given for {name}.",
                "Take the class as read. Two samples of the block, taken the same day, show how far apart results lie.");
        }

        var assumptions = new List<Assumption> { Said(composite, "composite-spread") };
        if (cores is not null)
        {
            assumptions.Add(new Assumption(
                "cores-not-counted",
                $"The number of cores is not counted for {Words.Analytes.IdOf(analyte)}: no figure of how it varies from core to core is held.",
                Citation.OurJudgement));
        }

        return Answer<ResultSpread>.Given(IsPh(analyte)
            ? new ResultSpread(false, default, PhSpread.FromPhUnits((double)value), null, assumptions)
            : new ResultSpread(true, Relative(composite, amount, working), default, null, assumptions));
    }

    /// <summary>True for what is a logarithm already and spreads by a standard deviation of its own.</summary>
    /// <param name="analyte">Which analyte.</param>
    internal static bool IsPh(Analyte analyte) => analyte is Analyte.Ph or Analyte.BufferPh;

    /// <summary>A row of the table as a sentence with its source.</summary>
    internal static Assumption Said(Spread spread, string code)
    {
        var name = spread.Analyte is { } analyte ? Words.Analytes.IdOf(analyte) : "A soil test";
        var what = spread.Kind switch
        {
            SpreadKind.SamplingAndAnalysis => $"{name} of one composite, sampling and analysis together,",
            SpreadKind.LaboratoryRepeat => $"{name} repeated in one laboratory",
            SpreadKind.BetweenLaboratories => $"{name} of one sample, from laboratory to laboratory,",
            SpreadKind.Field => $"{name} from core to core in one field",
            _ => $"{name} from season to season",
        };
        var carried = spread.UseIsOurs ? " We carry this figure over to this use." : "";
        return new Assumption(code, $"{what} is taken to vary by {Figure(spread)} (standard deviation).{carried}{(spread.Note is null ? "" : " " + spread.Note)}", spread.Source);
    }

    private static string Figure(Spread spread)
    {
        var value = spread.Value?.ToString("0.######", CultureInfo.InvariantCulture) ?? "?";
        return spread.Measure == SpreadMeasure.CoefficientOfVariation
            ? $"{value} % of the value"
            : spread.Unit is ReportingUnit.PhUnits ? $"{value} pH units" : spread.Unit is ReportingUnit.Percent ? $"{value} percentage points" : $"{value} {Words.Units.IdOf(spread.Unit!.Value)}";
    }

    private static Answer<ResultSpread> OfCores(Spread laboratory, Spread field, Amount amount, int cores, WorkingSheet? working)
    {
        var shares = (Relative(laboratory, amount, working), Relative(field, amount, working), new Coefficient(cores));
        var spread = CertaintyFormulas.OfComposite.Of(
            shares,
            working,
            laboratory.Measure == SpreadMeasure.CoefficientOfVariation ? Origin.From(laboratory.Source) : Origin.Line(working?.LastLine ?? 0),
            Origin.From(field.Source),
            Origin.Given("cores of the sample"));
        return Answer<ResultSpread>.Given(new ResultSpread(true, spread, default, cores, [Said(laboratory, "laboratory-spread"), Said(field, "field-spread")]));
    }

    private static CoefficientOfVariation Relative(Spread spread, Amount amount, WorkingSheet? working) =>
        spread.Measure == SpreadMeasure.CoefficientOfVariation
            ? CoefficientOfVariation.FromPercent((double)spread.Value!.Value)
            : CertaintyFormulas.OfDeviation.Of(
                (new Coefficient((double)spread.Value!.Value), new Coefficient(Math.Max((double)amount.Number, 1e-9))),
                working,
                Origin.From(spread.Source),
                Origin.Given("the result"));
}
