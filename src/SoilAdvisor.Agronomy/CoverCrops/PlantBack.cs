namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>How long the bed rests between the end of a cover crop and the next crop: the longest of the reasons that apply.</summary>
/// <param name="Days">Days kept free; 0 or more.</param>
/// <param name="Reasons">Every reason that applies, longest first.</param>
public sealed record PlantBack(int Days, IReadOnlyList<PlantBackRule> Reasons);
