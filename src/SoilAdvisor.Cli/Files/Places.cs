namespace SoilAdvisor.Cli.Files;

/// <summary>Remembers where in the user's files each part of a request came from, so that a complaint of the service names file, line and column.</summary>
internal sealed class Places
{
    private readonly Dictionary<string, string> places = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> documents = new(StringComparer.Ordinal);
    private string? whole;

    /// <summary>Notes the place of one part and of all that stands below it.</summary>
    /// <param name="pointer">JSON Pointer into the request.</param>
    /// <param name="place">File, line and column.</param>
    public void Note(string pointer, string place) => places[pointer] = place;

    /// <summary>Notes that a part of the request is the user's own JSON file.</summary>
    /// <param name="pointer">JSON Pointer into the request; empty for the whole.</param>
    /// <param name="file">The file.</param>
    /// <param name="inside">JSON Pointer to the same part in the file.</param>
    public void NoteDocument(string pointer, string file, string inside = "") => documents[pointer] = $"{file} at {inside}";

    /// <summary>Notes the file that places without a JSON Pointer lie in.</summary>
    /// <param name="file">The file; null for none.</param>
    public void NoteFile(string? file) => whole = file;

    /// <summary>The user's place for a pointer of the service; the pointer itself when nothing was noted.</summary>
    public string Of(string pointer)
    {
        if (whole is not null && !pointer.StartsWith('/'))
        {
            return $"{whole} {pointer}".TrimEnd();
        }

        for (var part = pointer; ; part = part[..part.LastIndexOf('/')])
        {
            if (places.TryGetValue(part, out var place))
            {
                return place;
            }

            if (documents.TryGetValue(part, out var document))
            {
                return document + pointer[part.Length..];
            }

            if (part.LastIndexOf('/') < 0)
            {
                return pointer;
            }
        }
    }
}
