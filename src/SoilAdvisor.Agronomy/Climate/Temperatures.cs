namespace SoilAdvisor.Agronomy.Climate;

/// <summary>Daily temperatures: those that were given, and for the other days the normals.</summary>
/// <param name="Normals">Monthly normals; null when not known.</param>
/// <param name="Given">Days that were given; empty for none.</param>
public sealed record Temperatures(MonthlyNormals? Normals, IReadOnlyDictionary<DateOnly, DailyTemperature> Given)
{
    /// <summary>Low and high of a day; null when it was not given and there are no normals.</summary>
    /// <param name="day">The day.</param>
    public DailyTemperature? On(DateOnly day) => Given.TryGetValue(day, out var given) ? given : Normals?.On(day);
}
