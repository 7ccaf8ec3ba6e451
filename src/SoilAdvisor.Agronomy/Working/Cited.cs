namespace SoilAdvisor.Agronomy.Working;

/// <summary>A value with its citation. There is no way to make one without the other.</summary>
/// <typeparam name="T">Type of the value.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="Source">Where it stands.</param>
public sealed record Cited<T>(T Value, Citation Source);
