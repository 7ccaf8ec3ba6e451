namespace SoilAdvisor.Agronomy.Materials;

/// <summary>An amount of money. Amounts of different currencies do not add.</summary>
/// <param name="Value">How much; not negative in a price.</param>
/// <param name="Currency">ISO 4217 code.</param>
public readonly record struct Money(decimal Value, string Currency);
