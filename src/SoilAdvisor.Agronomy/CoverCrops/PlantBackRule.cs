using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>A published wait between killing a cover crop and the next crop.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Cause">allelopathy, immobilisation, seedcorn-maggot, cutworm, settling or none.</param>
/// <param name="CoverCrops">Cover crops it holds for; empty for all.</param>
/// <param name="NextCrops">Crops or families it holds for; empty for all.</param>
/// <param name="When">killed-green, winter-killed or any.</param>
/// <param name="DaysLow">Shortest wait printed.</param>
/// <param name="DaysHigh">Longest wait printed; null for one number or "at least".</param>
/// <param name="Binding">True when the wait is kept free in the calendar, false when it is only said.</param>
/// <param name="Text">What is asked, in words.</param>
/// <param name="Source">Where it stands.</param>
public sealed record PlantBackRule(
    string Id,
    string Cause,
    IReadOnlyList<string> CoverCrops,
    IReadOnlyList<string> NextCrops,
    string When,
    int DaysLow,
    int? DaysHigh,
    bool Binding,
    string Text,
    Citation Source);
