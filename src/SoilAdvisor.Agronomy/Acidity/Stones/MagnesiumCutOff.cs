using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>Soil magnesium below which a publication prefers dolomitic stone. None chooses by a calcium to magnesium ratio.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Title">Whose it is.</param>
/// <param name="Region">ISO 3166-2 code.</param>
/// <param name="DolomiticBelow">The cut-off, as printed.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Source">Where it stands.</param>
public sealed record MagnesiumCutOff(string Id, string Title, string Region, decimal DolomiticBelow, ReportingUnit Unit, Citation Source);
