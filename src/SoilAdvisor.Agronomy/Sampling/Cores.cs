using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>Cores of a composite: how many for a wanted precision, and how near a number comes.</summary>
public static class Cores
{
    /// <summary>The published spread from core to core.</summary>
    /// <param name="variability">The published spreads.</param>
    /// <param name="analyte">Of what.</param>
    /// <param name="extractant">By which extractant; null for none.</param>
    /// <returns>The spread, or a refusal where none is published.</returns>
    public static Answer<FieldSpread> PublishedSpread(Variability variability, Analyte analyte, Extractant? extractant) =>
        variability.For(analyte, extractant, SpreadUse.Cores) is { Value: { } percent } spread
            ? Answer<FieldSpread>.Given(new FieldSpread(CoefficientOfVariation.FromPercent((double)percent), Origin.From(spread.Source), [ResultSpreads.Said(spread, "field-spread")]))
            : Answer<FieldSpread>.Refused(
                "field-spread-not-known",
                $"No published figure says how {Words.Analytes.IdOf(analyte)} varies from core to core in a field.",
                $"Give the coefficient of variation (cv, %) of your own block. Figures are held for {Held(variability)}.");

    /// <summary>A spread that the grower knows.</summary>
    /// <param name="value">The spread.</param>
    public static FieldSpread GivenSpread(CoefficientOfVariation value) => new(value, Origin.Given("your coefficient of variation"), []);

    /// <summary>Cores for a wanted precision.</summary>
    /// <param name="field">Spread from core to core.</param>
    /// <param name="wanted">Precision, plus or minus; 1 % or more.</param>
    /// <param name="confidence">Confidence.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    public static CoreCount For(FieldSpread field, Precision wanted, Confidence confidence, WorkingSheet? working = null)
    {
        var score = Score(confidence, working);
        var known = SamplingFormulas.CoresForPrecision.Of((score, field.Value, wanted), working, Origin.Line(working?.LastLine ?? 0), field.From, Origin.Given("wanted precision"));
        var cores = SamplingFormulas.CoresForPrecisionByStudent.Of((confidence, field.Value, wanted), working, Origin.Given("confidence"), field.From, Origin.Given("wanted precision"));
        return new CoreCount(field.Value, wanted, confidence, (int)cores.Value, (int)known.Value, field.Assumptions);
    }

    /// <summary>How near a number of cores comes.</summary>
    /// <param name="field">Spread from core to core.</param>
    /// <param name="cores">Cores, 1 or more.</param>
    /// <param name="confidence">Confidence.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    public static CorePrecision Reached(FieldSpread field, int cores, Confidence confidence, WorkingSheet? working = null)
    {
        var score = Score(confidence, working);
        var reached = SamplingFormulas.PrecisionOfCores.Of((score, field.Value, new Coefficient(cores)), working, Origin.Line(working?.LastLine ?? 0), field.From, Origin.Given("cores"));
        return new CorePrecision(field.Value, cores, confidence, reached, field.Assumptions);
    }

    internal static Coefficient Score(Confidence confidence, WorkingSheet? working) => SamplingFormulas.StandardScore.Of(confidence, working, Origin.Given("confidence"));

    private static string Held(Variability variability) =>
        string.Join(", ", variability.Spreads.Where(s => s is { Use: SpreadUse.Cores, Analyte: not null }).Select(s => Words.Analytes.IdOf(s.Analyte!.Value)).Distinct());
}
