namespace SoilAdvisor.ReferenceTables.Tests;

/// <summary>The tables of this repository.</summary>
public sealed class RealTablesTests
{
    private static readonly string Folder = Tables.FindFolder(AppContext.BaseDirectory);

    [Fact]
    public void They_hold_no_problem() => Assert.Equal("", string.Join('\n', Tables.Check(Folder)));

    [Fact]
    public void They_load()
    {
        var tables = Tables.Load(Folder);

        Assert.True(tables.Guides.ContainsKey("delaware-vegetables"));
        Assert.True(tables.RateTables["mid-atlantic-vegetables"].Rates.Count > 300);
    }
}
