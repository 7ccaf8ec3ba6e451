namespace SoilAdvisor.Cli.Files;

/// <summary>Writes a result to a file: whole or not at all.</summary>
internal static class OutputFile
{
    /// <summary>Why nothing may be written there; null when it may.</summary>
    public static Complaint? Refusal(string path, bool force, IEnumerable<string> inputs)
    {
        var full = Path.GetFullPath(path);
        if (Directory.Exists(full))
        {
            return new(path, "This is a folder.", "Name a file in it.");
        }

        if (Path.GetDirectoryName(full) is { } folder && !Directory.Exists(folder))
        {
            return new(path, $"There is no folder {folder}.", "Make it first, or name another.");
        }

        if (inputs.Any(i => Path.GetFullPath(i).Equals(full, StringComparison.Ordinal)))
        {
            return new(path, "This is the file that is read.", "Name another file for the result.");
        }

        return File.Exists(full) && !force
            ? new(path, "The file is already there and is left as it is.", "Name another file, or add --force to replace it.")
            : null;
    }

    /// <summary>Writes beside the target first and then puts it in place, so that a stop in between leaves no half file.</summary>
    public static async Task Write(string path, ReadOnlyMemory<byte> content, bool force, CancellationToken stop)
    {
        var full = Path.GetFullPath(path);
        var beside = $"{full}.{Environment.ProcessId}.part";
        try
        {
            await File.WriteAllBytesAsync(beside, content, stop);
            File.Move(beside, full, overwrite: force);
        }
        finally
        {
            File.Delete(beside);
        }
    }
}
