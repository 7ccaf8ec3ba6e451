using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>Whether two results of one block differ in truth.</summary>
/// <param name="Analyte">Of what.</param>
/// <param name="Before">First result, in <paramref name="Unit"/>.</param>
/// <param name="After">Second result, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit of the first test.</param>
/// <param name="Difference">After less before.</param>
/// <param name="Deviation">Standard deviation of the difference.</param>
/// <param name="SmallestProvable">Smallest difference that chance does not explain.</param>
/// <param name="IsProved">True where the difference reaches it.</param>
/// <param name="Confidence">At which confidence.</param>
/// <param name="Words">The answer in a sentence.</param>
/// <param name="Assumptions">What it rests on.</param>
public sealed record TestChange(
    Analyte Analyte,
    Amount Before,
    Amount After,
    ReportingUnit Unit,
    decimal Difference,
    double Deviation,
    double SmallestProvable,
    bool IsProved,
    Confidence Confidence,
    string Words,
    IReadOnlyList<Assumption> Assumptions);
