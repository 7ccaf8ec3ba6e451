using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>Where phosphorus and potassium of a bed are heading.</summary>
/// <param name="Years">How many years are shown.</param>
/// <param name="Phosphorus">Phosphorus, or why it is not projected; null where nobody asked and the test stands in its target.</param>
/// <param name="Potassium">Potassium, or why it is not projected; null where nobody asked and the test stands in its target.</param>
/// <param name="HoldRates">Rates at which phosphorus stops climbing; empty where there are none.</param>
/// <param name="WithoutPhosphorus">At the stop limit: why the plan brings none; null below it.</param>
public sealed record YearsAheadPlan(
    int Years,
    Answer<NutrientOutlook>? Phosphorus,
    Answer<NutrientOutlook>? Potassium,
    IReadOnlyList<HoldRate> HoldRates,
    Cited<string>? WithoutPhosphorus)
{
    /// <summary>Those of the two that are answered or refused.</summary>
    public IEnumerable<Answer<NutrientOutlook>> Outlooks => new[] { Phosphorus, Potassium }.Where(o => o is not null).Select(o => o!.Value);
}
