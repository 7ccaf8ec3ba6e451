namespace SoilAdvisor.Cli;

/// <summary>One thing the user has to correct.</summary>
/// <param name="Where">File with line and column, option, or pointer into the request.</param>
/// <param name="Message">What was received and why it cannot be used.</param>
/// <param name="Suggestion">What to do; empty when the message says it.</param>
/// <param name="Code">Permanent code of the service; null for what the command itself found.</param>
internal sealed record Complaint(string Where, string Message, string Suggestion, string? Code = null);
