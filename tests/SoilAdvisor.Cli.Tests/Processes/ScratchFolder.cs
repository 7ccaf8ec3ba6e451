namespace SoilAdvisor.Cli.Tests.Processes;

/// <summary>A folder for one test, removed after it.</summary>
public sealed class ScratchFolder : IDisposable
{
    /// <summary>Its path.</summary>
    public string Path { get; } = Directory.CreateTempSubdirectory("soil-").FullName;

    /// <summary>Writes a file into it and returns the file's path.</summary>
    public string File(string name, string content)
    {
        var path = At(name);
        System.IO.File.WriteAllText(path, content);
        return path;
    }

    /// <summary>Path of a file in it.</summary>
    public string At(string name) => System.IO.Path.Combine(Path, name);

    /// <inheritdoc />
    public void Dispose() => Directory.Delete(Path, recursive: true);
}
