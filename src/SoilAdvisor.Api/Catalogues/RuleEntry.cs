using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>A rule of an organic standard.</summary>
internal sealed record RuleEntry(string Id, string Standard, string Section, string Subject, string WhatItAsks, CitedAs By) : Sourced(By);
