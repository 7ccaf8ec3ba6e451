using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Certification;

/// <summary>One rule held against one plan. The certifier decides; this prepares.</summary>
/// <param name="Rule">Id of the rule.</param>
/// <param name="Standard">Which standard, for example US-NOP.</param>
/// <param name="Section">Section of the regulation.</param>
/// <param name="State">Outcome.</param>
/// <param name="Message">What was found and what to do, with dates and amounts.</param>
/// <param name="Record">Record to keep, or the one that would decide; null for none.</param>
/// <param name="Blocks">True when the plan must not be carried out as it stands.</param>
/// <param name="Source">Where the rule stands.</param>
public sealed record Finding(string Rule, string Standard, string Section, FindingState State, string Message, string? Record, bool Blocks, Citation Source);
