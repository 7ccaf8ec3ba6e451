using UnitsNet;

namespace SoilAdvisor.Agronomy.FieldWork;

/// <summary>Materials that go out together and may be mixed, for beds that get them in the same proportion.</summary>
/// <param name="By">Last day, that of the part with the longest wait; null where no date is known.</param>
/// <param name="Parts">What goes into the batch; at least two.</param>
/// <param name="Portions">What each bed gets of it; at least one.</param>
public sealed record MixingBatch(DateOnly? By, IReadOnlyList<MixPart> Parts, IReadOnlyList<MixPortion> Portions)
{
    /// <summary>Weight of the batch.</summary>
    public Mass Weight => Mass.FromKilograms(Parts.Sum(p => p.Weight.Kilograms));

    /// <summary>What is left when every bed has its portion.</summary>
    public Mass Left => Mass.FromKilograms(Math.Max(0, Weight.Kilograms - Portions.Sum(p => p.Weight.Kilograms)));
}
