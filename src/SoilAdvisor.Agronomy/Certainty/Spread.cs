using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>One published spread of results.</summary>
/// <param name="Analyte">Of what; null for soil tests in general, which only information may be.</param>
/// <param name="Extractant">By which extractant; null where none is printed.</param>
/// <param name="Kind">Why results differ.</param>
/// <param name="Use">What it is used for.</param>
/// <param name="UseIsOurs">True where the publication does not speak of this use and we carry the figure over.</param>
/// <param name="Measure">How it was printed.</param>
/// <param name="Value">The figure used, in <paramref name="Unit"/>; null where only words or a range are printed.</param>
/// <param name="Low">Low end of what is printed; null for none.</param>
/// <param name="High">High end of what is printed; null for none.</param>
/// <param name="Unit">Percent of the value, or the analyte's own unit.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Note">What was measured, and why it is used as it is.</param>
public sealed record Spread(
    Analyte? Analyte,
    Extractant? Extractant,
    SpreadKind Kind,
    SpreadUse Use,
    bool UseIsOurs,
    SpreadMeasure Measure,
    decimal? Value,
    decimal? Low,
    decimal? High,
    ReportingUnit? Unit,
    Citation Source,
    string? Note);
