using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>A crop or cover crop that stood on the bed before and may earn a credit.</summary>
/// <param name="What">Crop or cover crop id.</param>
/// <param name="IsCoverCrop">True for a cover crop.</param>
/// <param name="DryMatter">Measured dry matter; null when not measured.</param>
/// <param name="NitrogenPercent">Measured %N of the dry matter; null when not measured.</param>
/// <param name="Stage">Stage when killed, in words; null when not said.</param>
/// <param name="Killed">Day it was killed; null when not said.</param>
public sealed record PreviousStand(string What, bool IsCoverCrop, MassPerArea? DryMatter, decimal? NitrogenPercent, string? Stage, DateOnly? Killed)
{
    /// <summary>The other species of a mixture of cover crops; empty for a single one.</summary>
    public IReadOnlyList<string> Partners { get; init; } = [];

    /// <summary>What is said with dry matter that was estimated and not weighed; null when it was weighed.</summary>
    public Assumption? Estimate { get; init; }
}
