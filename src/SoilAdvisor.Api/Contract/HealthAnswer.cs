using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Contract;

/// <summary>Whether the service is well, and with which tables.</summary>
internal sealed record HealthAnswer(string Status, Versions Versions);
