namespace SoilAdvisor.PublishedChecks;

/// <summary>A value and the class it belongs to.</summary>
/// <param name="Value">Value in the unit of its table.</param>
/// <param name="Class">The guide's word for the class.</param>
public sealed record LimitRow(decimal Value, string Class);
