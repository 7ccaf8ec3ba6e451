using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>A soil test held against one regulatory limit. The local authority decides; this prepares.</summary>
/// <param name="Ceiling">The limit.</param>
/// <param name="Amount">The test's value in the limit's unit.</param>
/// <param name="State">Act when it is reached, pass when not, not decidable when the laboratory printed less than or more than a number on the wrong side.</param>
/// <param name="Message">What was found and what it asks, in one or two plain sentences with units.</param>
/// <param name="Assumptions">What was assumed on the way.</param>
public sealed record CeilingFinding(GuideCeiling Ceiling, Amount Amount, FindingState State, string Message, IReadOnlyList<Assumption> Assumptions)
{
    /// <summary>Where the limit stands.</summary>
    public Citation Source => Ceiling.Source;
}
