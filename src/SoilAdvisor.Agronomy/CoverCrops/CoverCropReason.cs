using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>One reason for or against a cover crop. Its points are its grade times its weight; both are shown and the weight can be changed.</summary>
/// <param name="Kind">Kebab-case kind, one of <see cref="CoverCropWeights.Kinds"/>.</param>
/// <param name="Text">The reason in one plain sentence.</param>
/// <param name="Grade">How much of it: 0 to 3 for what a cover crop does well, below zero against it, 0 for what is only good to know.</param>
/// <param name="Weight">How heavily this kind counts.</param>
/// <param name="Source">Where it stands.</param>
public sealed record CoverCropReason(string Kind, string Text, double Grade, double Weight, Citation Source)
{
    /// <summary>Grade times weight; negative speaks against.</summary>
    public double Points => Grade * Weight;
}
