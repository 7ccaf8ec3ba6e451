using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>A limit of one request.</summary>
internal sealed record LimitEntry(string Id, string What, decimal Value, string Unit, CitedAs By) : Sourced(By);
