namespace SoilAdvisor.ReferenceTables.Tests;

/// <summary>Finding the folder of tables.</summary>
public sealed class FindFolderTests
{
    [Fact]
    public void It_is_found_in_a_folder_above()
    {
        var root = Directory.CreateTempSubdirectory("find-");
        try
        {
            var tables = root.CreateSubdirectory(Tables.FolderName);
            var deep = root.CreateSubdirectory("program/bin");

            Assert.Equal(tables.FullName, Tables.FindFolder(deep.FullName));
            Assert.Equal(tables.FullName, Tables.FindFolder(root.FullName));
        }
        finally
        {
            root.Delete(recursive: true);
        }
    }

    [Fact]
    public void Without_one_the_message_says_what_to_do()
    {
        var fault = Assert.Throws<DirectoryNotFoundException>(() => Tables.FindFolder(Path.GetPathRoot(AppContext.BaseDirectory)!));

        Assert.Contains(Tables.FolderVariable, fault.Message, StringComparison.Ordinal);
    }
}
