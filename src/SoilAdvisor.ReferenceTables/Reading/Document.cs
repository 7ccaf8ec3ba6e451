namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>A JSON file that was read, with the lines of its members.</summary>
internal abstract class Document(string path, JsonLines lines)
{
    /// <summary>Path below the folder of tables.</summary>
    public string Path { get; } = path;

    /// <summary>Folder below the folder of tables, without a slash at the end; empty for the top.</summary>
    public string Folder { get; } = TableText.FolderOf(path);

    public TableProblem At(string member, string code, string words) => new(Path, lines[member], member, code, words);
}

/// <inheritdoc/>
internal sealed class Document<T>(string path, JsonLines lines, T value) : Document(path, lines)
{
    public T Value { get; } = value;
}
