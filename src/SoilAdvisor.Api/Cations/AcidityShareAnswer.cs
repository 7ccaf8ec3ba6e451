using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Cations;

/// <summary>Acidity's part of the exchange and where it comes from.</summary>
internal sealed record AcidityShareAnswer(decimal Charge, decimal Saturation, string From, CitedAs By) : Sourced(By);
