namespace SoilAdvisor.Api.Answers;

/// <summary>One entry of the bibliography, with the evidence under which its values were used here.</summary>
internal sealed record SourceAnswer(
    string Id,
    string? Authors,
    string Title,
    string? Publisher,
    string? Edition,
    int? Year,
    string? Link,
    string? ArchivedLink,
    string? Note,
    IReadOnlyList<string> Evidence);
