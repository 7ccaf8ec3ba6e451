namespace SoilAdvisor.Agronomy.Working;

/// <summary>One entry of the bibliography.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Authors">Authors as printed; null where the publication names none.</param>
/// <param name="Title">Title as printed.</param>
/// <param name="Publisher">Who issued it; null where the copy that was read does not show it, or the title already names it.</param>
/// <param name="Edition">Edition or bulletin number; null where none is printed.</param>
/// <param name="Year">Year of issue; null where none is printed.</param>
/// <param name="Link">Where it can be read; null where it is not on the web.</param>
/// <param name="ArchivedLink">A kept copy of the link; null where none is known.</param>
/// <param name="Note">Licence or fair-use note, and what was read of it.</param>
public sealed record Source(
    string Id,
    string? Authors,
    string Title,
    string? Publisher,
    string? Edition,
    int? Year,
    string? Link,
    string? ArchivedLink,
    string? Note);
