using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Certification;

/// <summary>A rule of an organic standard, as data.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Standard">Standard, for example US-NOP.</param>
/// <param name="Section">Section.</param>
/// <param name="Subject">Subject.</param>
/// <param name="WhatItAsks">What it asks, in our words.</param>
/// <param name="Source">Where it stands.</param>
public sealed record OrganicRule(string Id, string Standard, string Section, string Subject, string WhatItAsks, Citation Source);
