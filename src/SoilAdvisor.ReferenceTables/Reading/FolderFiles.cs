using System.Security.Cryptography;
using System.Text;

namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>The files of the folder, in a stable order, and the one hash that names their state.</summary>
internal static class FolderFiles
{
    /// <summary>Every CSV and JSON file below the folder, ordered by path.</summary>
    public static IReadOnlyList<TableText> Read(string folder) =>
    [
        .. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Where(path => path.EndsWith(".csv", StringComparison.Ordinal) || path.EndsWith(".json", StringComparison.Ordinal))
            .Select(path => (path, name: Path.GetRelativePath(folder, path).Replace('\\', '/')))
            .OrderBy(f => f.name, StringComparer.Ordinal)
            .Select(f => new TableText(f.name, File.ReadAllBytes(f.path))),
    ];

    /// <summary>Sixteen hexadecimal digits over all paths and contents; the same whatever the line ending.</summary>
    public static string VersionOf(IReadOnlyList<TableText> texts)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var text in texts)
        {
            hash.AppendData(Encoding.UTF8.GetBytes(text.Path));
            hash.AppendData([0]);
            hash.AppendData(text.Bytes.Where((b, i) => b != '\r' || i + 1 == text.Bytes.Length || text.Bytes[i + 1] != '\n').ToArray());
            hash.AppendData([0]);
        }
        return Convert.ToHexStringLower(hash.GetHashAndReset())[..16];
    }
}
