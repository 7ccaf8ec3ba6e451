namespace SoilAdvisor.Agronomy.Working;

/// <summary>One input of a line of working: a number in a unit, or words where the step looks something up.</summary>
/// <param name="Symbol">Symbol as the formula shows it.</param>
/// <param name="Name">What it stands for.</param>
/// <param name="Value">The number; null where the input is words or left blank.</param>
/// <param name="Text">The words; null where the input is a number or left blank.</param>
/// <param name="Unit">Unit of the number; empty for none.</param>
/// <param name="From">Where it comes from.</param>
public sealed record WorkingInput(string Symbol, string Name, double? Value, string? Text, string Unit, Origin From);
