namespace SoilAdvisor.ReferenceTables.Kinds;

/// <summary>A kind of table: where it lies and exactly which columns it has.</summary>
/// <param name="Name">The word in the document's <c>kind</c>.</param>
/// <param name="Home">Folder it lies in; a * stands for the id of a guide, rate table or lime method.</param>
/// <param name="FileName">Name of its files without ending.</param>
/// <param name="Presence">Whether it may be missing.</param>
/// <param name="Columns">Its own columns and the four of the citation, in order.</param>
internal sealed record RowKind(string Name, string Home, string FileName, Presence Presence, IReadOnlyList<KindColumn> Columns)
{
    /// <summary>True when a table of this kind may lie in the folder.</summary>
    public bool LivesIn(string folder) => Home.EndsWith("/*", StringComparison.Ordinal)
        ? folder.StartsWith(Home[..^1], StringComparison.Ordinal) && !folder[(Home.Length - 1)..].Contains('/')
        : folder == Home;
}
