namespace SoilAdvisor.Agronomy.CoverCrops.Seasons;

/// <summary>When a crop of a family stands, stood or will stand on a bed.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Family">Its botanical family.</param>
/// <param name="From">First day.</param>
/// <param name="To">Last day; not before the first.</param>
public sealed record CropTime(string Name, string Family, DateOnly From, DateOnly To)
{
    /// <summary>Whether so many whole months do not lie between it and another time.</summary>
    /// <param name="from">First day of the other.</param>
    /// <param name="to">Last day of the other.</param>
    /// <param name="months">Months that must lie between them; not below zero.</param>
    public bool IsWithin(DateOnly from, DateOnly to, int months) => from < To.AddMonths(months) && From < to.AddMonths(months);
}
