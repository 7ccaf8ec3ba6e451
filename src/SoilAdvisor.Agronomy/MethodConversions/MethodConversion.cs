using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.MethodConversions;

/// <summary>
/// A published line from one method to another, or a published warning that there is none. Used only when it is named; never chosen for the
/// user.
/// </summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Analyte">What is converted.</param>
/// <param name="From">The method of the report. No detection means that any will do.</param>
/// <param name="To">The method that the result counts as. No detection means that the source prints none.</param>
/// <param name="Line">The line; null where the publication warns against converting.</param>
/// <param name="Reason">Why there is no line; null where there is one.</param>
/// <param name="HighestPh">Soil pH above which, as with free lime, it does not hold; null for no such limit.</param>
/// <param name="SampleSet">Which soils stand behind it.</param>
/// <param name="Validity">Where it holds, in the publication's sense.</param>
/// <param name="Disagreement">What other publications say of the same pair; null for none known.</param>
/// <param name="Source">Where it stands.</param>
public sealed record MethodConversion(
    string Id,
    Analyte Analyte,
    Method From,
    Method To,
    ConversionLine? Line,
    string? Reason,
    decimal? HighestPh,
    string SampleSet,
    string Validity,
    string? Disagreement,
    Citation Source);
