namespace SoilAdvisor.Api.Tests;

/// <summary>One fault of a response.</summary>
public sealed record ReplyFault(string Pointer, string Code, string Message, string Suggestion);
