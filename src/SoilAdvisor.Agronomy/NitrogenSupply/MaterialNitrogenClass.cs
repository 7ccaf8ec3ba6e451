using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>By which printed classes a material is read.</summary>
/// <param name="Material">Id of the material.</param>
/// <param name="ManureClass">Class of the release of organic nitrogen; null for none.</param>
/// <param name="SeasonClass">Class of the share in a season; null for none.</param>
/// <param name="Course">Release with time; null for none.</param>
/// <param name="Source">Whose reading it is.</param>
public sealed record MaterialNitrogenClass(string Material, string? ManureClass, string? SeasonClass, string? Course, Citation Source);
