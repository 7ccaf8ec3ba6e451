using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Api.Plans;

/// <summary>A soil test of a request with its place; null when it was refused.</summary>
internal sealed record TestRead(SoilTest? Test, string Pointer);
