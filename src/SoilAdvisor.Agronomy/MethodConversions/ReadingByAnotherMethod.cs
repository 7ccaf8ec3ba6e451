using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.MethodConversions;

/// <summary>A reading carried to another method by a line that the user named. Less certain than a measurement, all the way to the page.</summary>
/// <param name="Original">The reading as reported.</param>
/// <param name="Reading">The result: method, unit and amount of the target; the place of the report is kept.</param>
/// <param name="Conversion">The line used.</param>
/// <param name="Spread">What the line adds to the spread of the result; null for pH.</param>
/// <param name="PhSpread">What the line adds to the spread of a pH; null otherwise.</param>
/// <param name="Assumptions">What was assumed, the conversion itself first.</param>
public sealed record ReadingByAnotherMethod(
    Reading Original,
    Reading Reading,
    MethodConversion Conversion,
    CoefficientOfVariation? Spread,
    PhSpread? PhSpread,
    IReadOnlyList<Assumption> Assumptions);
