using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Plans;

/// <summary>One printed part of a rate, and when.</summary>
internal sealed record SplitAnswer(int Order, QuantityRange? Rate, string When, CitedAs By) : Sourced(By);
