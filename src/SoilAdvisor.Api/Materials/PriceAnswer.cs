namespace SoilAdvisor.Api.Materials;

/// <summary>Money for each unit of mass; to a tenth of a cent.</summary>
internal sealed record PriceAnswer(decimal Value, string Currency, string Per);
