using System.Text;

namespace SoilAdvisor.Cli.Files;

/// <summary>A file the user named, read whole.</summary>
/// <param name="Name">Path as the user wrote it.</param>
/// <param name="Content">Its bytes.</param>
internal sealed record InputFile(string Name, byte[] Content)
{
    // The service names its own, smaller limit; this one only keeps a mistaken path from filling the memory.
    private const long LargestBytes = 64L * 1024 * 1024;

    /// <summary>True for JSON, false for CSV.</summary>
    public bool IsJson => Path.GetExtension(Name).Equals(".json", StringComparison.OrdinalIgnoreCase);

    /// <summary>The media type by the ending of its name.</summary>
    public string MediaType => IsJson ? "application/json" : "text/csv";

    /// <summary>Reads a file; null when it cannot be used, which is then among the complaints.</summary>
    public static InputFile? Read(string path, List<Complaint> complaints)
    {
        if (Directory.Exists(path))
        {
            complaints.Add(new(path, "This is a folder.", "Name a CSV or JSON file."));
            return null;
        }

        if (!File.Exists(path))
        {
            complaints.Add(new(path, "There is no such file.", "Check the path. It is read from the folder you are in."));
            return null;
        }

        var ending = Path.GetExtension(path);
        if (!ending.Equals(".csv", StringComparison.OrdinalIgnoreCase) && !ending.Equals(".json", StringComparison.OrdinalIgnoreCase))
        {
            complaints.Add(new(path, $"A file ending in \"{ending}\" is not read.", "Save it as CSV (comma separated, UTF-8) or as JSON, and let its name end in .csv or .json."));
            return null;
        }

        if (new FileInfo(path).Length > LargestBytes)
        {
            complaints.Add(new(path, "The file is larger than 64 MB.", "Split it."));
            return null;
        }

        var content = File.ReadAllBytes(path);
        if (content.Length == 0)
        {
            complaints.Add(new(path, "The file is empty.", "Check that it was saved."));
            return null;
        }

        return new InputFile(path, content);
    }

    /// <summary>The content as text; null when it is not UTF-8, which is then among the complaints.</summary>
    public string? Text(List<Complaint> complaints)
    {
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(Content).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            complaints.Add(new(Name, "The file is not UTF-8 text.", "Save it as \"CSV UTF-8 (comma separated)\"."));
            return null;
        }
    }
}
