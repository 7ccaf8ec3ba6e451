using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.PublishedChecks;

/// <summary>The real reference tables, loaded once for all checks.</summary>
public static class TablesUnderTest
{
    private static readonly Lazy<Tables> Loaded = new(() => Tables.Load(Tables.FindFolder(AppContext.BaseDirectory)));

    /// <summary>The tables.</summary>
    public static Tables Current => Loaded.Value;
}
