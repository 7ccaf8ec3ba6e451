using System.Reflection;
using System.Runtime.CompilerServices;

namespace SoilAdvisor.Architecture.Tests;

/// <summary>The rooms of the house and the source tree that they were built from.</summary>
internal static class Rooms
{
    public static readonly Assembly Agronomy = typeof(SoilAdvisor.Agronomy.Ratings.Guide).Assembly;

    public static readonly string Root = FindRoot();

    /// <summary>What each room may know of the others, itself apart.</summary>
    public static readonly IReadOnlyDictionary<string, string[]> Allowed = new Dictionary<string, string[]>
    {
        ["SoilAdvisor.Agronomy"] = [],
        ["SoilAdvisor.ReferenceTables"] = ["SoilAdvisor.Agronomy"],
        ["SoilAdvisor.Planning"] = ["SoilAdvisor.Agronomy", "SoilAdvisor.ReferenceTables"],
        ["SoilAdvisor.Reports"] = ["SoilAdvisor.Agronomy", "SoilAdvisor.ReferenceTables"],
        ["SoilAdvisor.Api"] = ["SoilAdvisor.Agronomy", "SoilAdvisor.ReferenceTables", "SoilAdvisor.Planning", "SoilAdvisor.Reports"],
        ["SoilAdvisor.Cli"] = ["SoilAdvisor.Agronomy", "SoilAdvisor.Api", "SoilAdvisor.ReferenceTables"],
    };

    public static IEnumerable<string> SourceFiles(string room) =>
        Directory.EnumerateFiles(Path.Combine(Root, "src", room), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
                && !f.Contains($"{Path.DirectorySeparatorChar}bin{Path.DirectorySeparatorChar}", StringComparison.Ordinal));

    private static string FindRoot([CallerFilePath] string here = "") =>
        new FileInfo(here).Directory!.Parent!.Parent!.FullName;
}
