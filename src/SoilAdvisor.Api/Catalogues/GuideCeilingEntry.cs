using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>A limit of law that a guide prints, which is no class; where included, the limit itself already counts as reached. The local authority decides.</summary>
internal sealed record GuideCeilingEntry(
    string About, string? Index, string? Method, Quantity Limit, bool LimitIncluded, string Jurisdiction, string WhatItAsks, string? Condition, CitedAs By) : Sourced(By);
