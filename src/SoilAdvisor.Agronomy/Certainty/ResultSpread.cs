using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>
/// How far one result may lie from the truth of the ground that it stands for. pH spreads by a standard deviation in pH units, everything
/// else in proportion to its value.
/// </summary>
/// <param name="OnLogScale">True for everything but pH.</param>
/// <param name="Relative">Spread in percent of the value; zero for pH.</param>
/// <param name="PhUnits">Standard deviation in pH units; zero for the others.</param>
/// <param name="Cores">Cores that were counted; null where the composite's own spread was taken.</param>
/// <param name="Assumptions">Which rows were used and what was taken for granted.</param>
public sealed record ResultSpread(
    bool OnLogScale,
    CoefficientOfVariation Relative,
    PhSpread PhUnits,
    int? Cores,
    IReadOnlyList<Assumption> Assumptions)
{
    /// <summary>The spread after a further step that adds one of its own, such as a conversion between methods. Independent spreads add as squares.</summary>
    /// <param name="more">Spread of that step, in percent of the value.</param>
    /// <param name="why">Which step, and where its spread stands.</param>
    /// <exception cref="InvalidOperationException">The spread is one of pH, which no percentage widens.</exception>
    public ResultSpread WidenedBy(CoefficientOfVariation more, Assumption why) => OnLogScale
        ? this with
        {
            Relative = CoefficientOfVariation.FromFraction(Math.Sqrt((Relative.Fraction * Relative.Fraction) + (more.Fraction * more.Fraction))),
            Assumptions = [.. Assumptions, why],
        }
        : throw new InvalidOperationException("A pH is not widened by a percentage.");

    /// <summary>For example "10 %" or "0.1 pH units".</summary>
    public override string ToString() => OnLogScale ? Relative.ToString() : PhUnits.ToString();
}
