namespace SoilAdvisor.Agronomy.Climate;

/// <summary>Usual frost dates of the farm. Month and day count; the year is ignored.</summary>
/// <param name="LastSpring">Last frost in spring; null when not said.</param>
/// <param name="FirstFall">First frost in fall; null when not said.</param>
public sealed record FrostDates(DateOnly? LastSpring, DateOnly? FirstFall);
