using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>What a cover crop does for a nematode, a disease or an insect.</summary>
/// <param name="CoverCrop">Id of the species.</param>
/// <param name="Problem">The nematode, disease or insect, kebab-case, for example root-knot.</param>
/// <param name="Standing">host, depends-on-cultivar, poor-host or lowers.</param>
/// <param name="Families">Families of crops at risk; empty for many.</param>
/// <param name="Text">What was found, in words.</param>
/// <param name="Source">Where it stands.</param>
public sealed record CoverCropHost(string CoverCrop, string Problem, string Standing, IReadOnlyList<string> Families, string Text, Citation Source);
