namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>An effective value that the label prints itself.</summary>
/// <param name="Index">Id of the index, for example ohio-enp.</param>
/// <param name="Value">The score in the index's unit; above zero.</param>
public sealed record LabelScore(string Index, decimal Value);
