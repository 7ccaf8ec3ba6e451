using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>One published figure of a liming material or of liming.</summary>
/// <param name="Subject">Kebab-case subject, for example calcium-oxide or limestone.</param>
/// <param name="Property">Kebab-case property, for example neutralising-value.</param>
/// <param name="Value">The figure; null where only a range is printed.</param>
/// <param name="Low">Low end; null for none.</param>
/// <param name="High">High end; null for none.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Note">Remark; null for none.</param>
public sealed record LimingFigure(string Subject, string Property, decimal? Value, decimal? Low, decimal? High, string Unit, Citation Source, string? Note);
