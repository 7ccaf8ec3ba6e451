using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Plans;

/// <summary>A requirement that the materials cannot meet, by how much, and what would.</summary>
internal sealed record ShortfallAnswer(string Nutrient, int? Planting, Quantity Amount, string Limit, string WhatWouldMeetIt, CitedAs By) : Sourced(By);
