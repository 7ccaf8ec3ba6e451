namespace SoilAdvisor.Cli.Tests.Processes;

/// <summary>The demo in every format, run once for all tests that look at it.</summary>
public sealed class DemoRuns : IAsyncLifetime
{
    /// <summary>What the demo is asked with, beside the format.</summary>
    public static readonly IReadOnlyList<string> Plan =
    [
        "plan", "docs/demo/lab.csv", "--beds", "docs/demo/beds.csv", "--materials", "docs/demo/materials.csv",
        "--guide", "delaware-vegetables", "--date", "2026-11-24", "--farm", "Windfall Lane Teaching Garden (invented)",
    ];

    private readonly Dictionary<string, Ended> runs = [];

    /// <summary>The run in one format.</summary>
    public Ended In(string format) => runs[format];

    /// <inheritdoc />
    public async Task InitializeAsync()
    {
        foreach (var format in new[] { "table", "markdown", "html", "csv", "json" })
        {
            runs[format] = await SoilCommand.Run([.. Plan, "--format", format]);
        }
    }

    /// <inheritdoc />
    public Task DisposeAsync() => Task.CompletedTask;
}
