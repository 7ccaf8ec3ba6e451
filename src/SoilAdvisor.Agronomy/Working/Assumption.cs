namespace SoilAdvisor.Agronomy.Working;

/// <summary>Something taken as true that nobody stated. Printed with every result that rests on it.</summary>
/// <param name="Code">Stable kebab-case code.</param>
/// <param name="Text">The assumption in one plain sentence, with units.</param>
/// <param name="Source">Why it is a fair assumption.</param>
public sealed record Assumption(string Code, string Text, Citation Source);
