using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Ratings;

/// <summary>The soil test held against a limit of law, which is no class: state is pass, act or not-decidable. The local authority decides.</summary>
internal sealed record CeilingAnswer(
    string About, string? Index, Quantity Limit, string State, string Jurisdiction, string WhatItAsks, string? Condition, string Message, IReadOnlyList<AssumptionAnswer>? Assumptions, CitedAs By) : Sourced(By);
