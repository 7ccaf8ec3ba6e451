namespace SoilAdvisor.Agronomy.Climate;

/// <summary>Degree-days of a span with everything they mean.</summary>
/// <param name="Sum">The sum.</param>
/// <param name="Basis">Base, cut-off and method.</param>
/// <param name="From">First day counted.</param>
/// <param name="To">First day no longer counted.</param>
/// <param name="GivenDays">Days whose temperature was given; the others are interpolated from monthly normals.</param>
/// <param name="HasExtremes">False when some day had only its mean.</param>
/// <param name="ByMethod">The same span by every method, to see how far they differ.</param>
public sealed record DegreeDaySum(
    DegreeDays Sum, DegreeDayBasis Basis, DateOnly From, DateOnly To, int GivenDays, bool HasExtremes, IReadOnlyList<(DegreeDayMethod Method, DegreeDays Sum)> ByMethod);
