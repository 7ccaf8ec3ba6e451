using SoilAdvisor.Cli.Tests.Processes;

namespace SoilAdvisor.Cli.Tests;

/// <summary>A nitrate test before sidedressing on the terminal.</summary>
public sealed class NitrateTestTests : IDisposable
{
    private readonly ScratchFolder folder = new();

    // Rutgers sidedress table for sweet corn, restated: manured soil, 16 to 20 ppm, 80 lb N/acre; 80 / 43.56 = 1.84 lb to 1000 sq ft.
    [Fact]
    public async Task The_timing_column_turns_nitrate_into_a_rate_to_sidedress()
    {
        var lab = folder.File("lab.csv", "id,depth (in),timing,NO3-N (mg/kg)\nCorn Strip,0-12,before sidedressing,20\n");

        var run = await SoilCommand.Run("rate", lab, "--crop", "sweet-corn", "--manured", "yes");

        Assert.True(run.ExitCode == 0, run.ToString());
        var words = string.Join(' ', run.Results.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("Nitrate test before sidedressing: Sidedress 80 lb/acre of nitrogen (Sweet corn, manured soil). [ru-psnt", words, StringComparison.Ordinal);
        Assert.Contains("1.84 lb/1000 sq ft", words, StringComparison.Ordinal);
        Assert.Contains("It replaces: The nitrogen credits of the book", words, StringComparison.Ordinal);
    }

    /// <inheritdoc />
    public void Dispose() => folder.Dispose();
}
