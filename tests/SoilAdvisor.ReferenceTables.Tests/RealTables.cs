namespace SoilAdvisor.ReferenceTables.Tests;

/// <summary>The tables of this repository, loaded once for all tests of a class.</summary>
public sealed class RealTables
{
    public static string Folder { get; } = Tables.FindFolder(AppContext.BaseDirectory);

    public Tables Tables { get; } = Tables.Load(Folder);
}
