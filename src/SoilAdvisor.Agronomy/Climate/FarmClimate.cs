namespace SoilAdvisor.Agronomy.Climate;

/// <summary>What is known of the farm's climate. Everything may be missing; what is then assumed is said.</summary>
/// <param name="Frost">Usual frost dates; null when not said.</param>
/// <param name="Temperatures">Monthly normals, or days; null when not said.</param>
/// <param name="Zone">Hardiness zone; null when not said.</param>
/// <param name="Region">ISO 3166-2 code, so that sowing dates printed for a region are used there only; null when not said.</param>
/// <param name="Basis">How degree-days are counted.</param>
public sealed record FarmClimate(FrostDates? Frost, Temperatures? Temperatures, HardinessZone? Zone, string? Region, DegreeDayBasis Basis)
{
    /// <summary>Nothing is known.</summary>
    public static FarmClimate Unknown { get; } = new(null, null, null, null, DegreeDayBasis.Crucifers);
}
