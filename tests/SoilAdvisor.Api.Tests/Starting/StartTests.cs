using System.Diagnostics;

namespace SoilAdvisor.Api.Tests.Starting;

/// <summary>The service as its own process.</summary>
public sealed class StartTests
{
    [Fact]
    public async Task Bad_tables_stop_the_start_and_every_fault_is_printed()
    {
        var folder = Directory.CreateTempSubdirectory("bad-tables");
        try
        {
            await File.WriteAllTextAsync(Path.Combine(folder.FullName, "sources.json"), "[{]");
            Directory.CreateDirectory(Path.Combine(folder.FullName, "crops"));
            await File.WriteAllTextAsync(Path.Combine(folder.FullName, "crops", "crops.json"), "{");
            using var process = Start("/", folder.FullName);
            var output = process.StandardOutput.ReadToEndAsync();
            var faults = await process.StandardError.ReadToEndAsync();
            await process.WaitForExitAsync().WaitAsync(TimeSpan.FromSeconds(120));

            Assert.Equal(3, process.ExitCode);
            Assert.Contains("sources.json(1)", faults, StringComparison.Ordinal);
            Assert.Contains("crops/crops.json(1)", faults, StringComparison.Ordinal);
            Assert.DoesNotContain("Now listening", await output, StringComparison.Ordinal);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task Started_anywhere_it_finds_its_tables_and_listens_where_it_is_told()
    {
        using var process = Start("/", null);
        try
        {
            string? line;
            do
            {
                line = await process.StandardOutput.ReadLineAsync().WaitAsync(TimeSpan.FromSeconds(120));
            }
            while (line is not null && !line.Contains("Now listening on: ", StringComparison.Ordinal));

            Assert.NotNull(line);
            using var client = new HttpClient();
            var health = await client.GetStringAsync(new Uri(line[(line.IndexOf("http", StringComparison.Ordinal))..].Trim() + "/health"));
            Assert.Contains("\"status\":\"ok\"", health, StringComparison.Ordinal);
        }
        finally
        {
            process.Kill();
        }
    }

    private static Process Start(string from, string? tables)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(SoilAdvisor.Api.Host).Assembly.Location, "--urls", "http://127.0.0.1:0"])
        {
            WorkingDirectory = from,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        if (tables is not null)
        {
            start.Environment["SOILADVISOR_TABLES"] = tables;
        }

        return Process.Start(start)!;
    }
}
