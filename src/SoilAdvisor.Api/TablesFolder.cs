using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api;

/// <summary>Finds the reference tables wherever the service is started from.</summary>
internal static class TablesFolder
{
    /// <summary>The folder in or above the content root, the program or the current directory, whichever comes first.</summary>
    public static string Find(string contentRoot)
    {
        string[] starts = [contentRoot, AppContext.BaseDirectory, Directory.GetCurrentDirectory()];
        foreach (var start in starts[..^1])
        {
            try
            {
                return Tables.FindFolder(start);
            }
            catch (DirectoryNotFoundException)
            {
                // The next place may have it; the last one says what to do.
            }
        }

        return Tables.FindFolder(starts[^1]);
    }
}
