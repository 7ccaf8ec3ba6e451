namespace SoilAdvisor.ReferenceTables.Tests;

/// <summary>A folder of tables that a test may change: the small good folder, with the files of a bad one laid over it.</summary>
internal sealed class TableFolderCopy : IDisposable
{
    public static readonly string BadTables = System.IO.Path.Combine(AppContext.BaseDirectory, "bad-tables");

    private const string RemovedList = "removed.txt";
    private const string ExpectedList = "expected.txt";

    private readonly DirectoryInfo place = Directory.CreateTempSubdirectory("tables-");

    private TableFolderCopy(string origin) => LayOver(origin);

    public string Path => place.FullName;

    public static TableFolderCopy OfGood() => new(System.IO.Path.Combine(BadTables, "_good"));

    public static TableFolderCopy Of(string folder) => new(folder);

    public static TableFolderCopy OfBad(string code)
    {
        var copy = OfGood();
        copy.LayOver(System.IO.Path.Combine(BadTables, code));
        return copy;
    }

    public static string ExpectedOf(string code) => File.ReadAllText(System.IO.Path.Combine(BadTables, code, ExpectedList)).ReplaceLineEndings("\n").TrimEnd('\n');

    /// <summary>Replaces text in one file; the text must be there.</summary>
    public TableFolderCopy Change(string file, string old, string replacement)
    {
        var path = System.IO.Path.Combine(Path, file);
        var before = File.ReadAllText(path);
        Assert.Contains(old, before, StringComparison.Ordinal);
        File.WriteAllText(path, before.Replace(old, replacement, StringComparison.Ordinal));
        return this;
    }

    public void Dispose() => place.Delete(recursive: true);

    private void LayOver(string origin)
    {
        foreach (var file in Directory.EnumerateFiles(origin, "*", SearchOption.AllDirectories))
        {
            var name = System.IO.Path.GetRelativePath(origin, file);
            if (name is RemovedList or ExpectedList)
            {
                continue;
            }
            var target = System.IO.Path.Combine(Path, name);
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(target)!);
            File.Copy(file, target, overwrite: true);
        }
        if (File.Exists(System.IO.Path.Combine(origin, RemovedList)))
        {
            foreach (var name in File.ReadAllLines(System.IO.Path.Combine(origin, RemovedList)))
            {
                File.Delete(System.IO.Path.Combine(Path, name));
            }
        }
    }
}
