namespace SoilAdvisor.ReferenceTables.Tests;

/// <summary>The version id names the state of the tables.</summary>
public sealed class VersionTests
{
    [Fact]
    public void It_changes_when_a_cell_changes_and_only_then()
    {
        using var one = TableFolderCopy.OfGood();
        using var same = TableFolderCopy.OfGood();
        using var other = TableFolderCopy.OfGood().Change("materials/material-values.csv", "total-nitrogen,12,", "total-nitrogen,13,");

        Assert.Equal(Tables.Load(one.Path).VersionId, Tables.Load(same.Path).VersionId);
        Assert.NotEqual(Tables.Load(one.Path).VersionId, Tables.Load(other.Path).VersionId);
    }

    [Fact]
    public void It_does_not_depend_on_line_endings_and_neither_do_the_tables()
    {
        using var unix = TableFolderCopy.OfGood();
        using var windows = TableFolderCopy.OfGood();
        foreach (var file in Directory.EnumerateFiles(windows.Path, "*.*", SearchOption.AllDirectories))
        {
            File.WriteAllText(file, File.ReadAllText(file).ReplaceLineEndings("\r\n"));
        }

        Assert.Equal(Tables.Load(unix.Path).VersionId, Tables.Load(windows.Path).VersionId);
    }

    [Fact]
    public void It_changes_when_a_table_moves()
    {
        using var before = TableFolderCopy.OfGood();
        using var after = TableFolderCopy.OfGood();
        Directory.Move(Path.Combine(after.Path, "lime-methods/example-table"), Path.Combine(after.Path, "lime-methods/moved-table"));
        after.Change("lime-methods/moved-table/method.json", "\"example-table\"", "\"moved-table\"")
            .Change("lime-methods/moved-table/cells.json", "example-table", "moved-table");

        Assert.NotEqual(Tables.Load(before.Path).VersionId, Tables.Load(after.Path).VersionId);
    }

    [Fact]
    public void It_is_sixteen_hexadecimal_digits()
    {
        using var good = TableFolderCopy.OfGood();

        Assert.Matches("^[0-9a-f]{16}$", Tables.Load(good.Path).VersionId);
    }
}
