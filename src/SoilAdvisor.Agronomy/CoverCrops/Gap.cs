namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>Time a bed stands free between two crops.</summary>
/// <param name="From">First free day.</param>
/// <param name="To">Last free day; not before the first.</param>
public sealed record Gap(DateOnly From, DateOnly To)
{
    /// <summary>Whole days.</summary>
    public int Days => To.DayNumber - From.DayNumber;
}
