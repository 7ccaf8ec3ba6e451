using System.Diagnostics;

namespace SoilAdvisor.Cli.Tests.Processes;

/// <summary>Runs the command on a terminal of its own.</summary>
internal static class Terminal
{
    /// <summary>All that appears on the terminal.</summary>
    /// <param name="surroundings">Environment variables beside those of this process.</param>
    /// <param name="arguments">As typed; no quotes.</param>
    public static async Task<string> Run(IReadOnlyList<(string Name, string Value)> surroundings, string arguments)
    {
        var start = new ProcessStartInfo("script")
        {
            WorkingDirectory = SoilCommand.Top,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        };
        foreach (var argument in new[] { "--quiet", "--return", "--command", $"dotnet '{Path.Combine(AppContext.BaseDirectory, "soil.dll")}' {arguments}", "/dev/null" })
        {
            start.ArgumentList.Add(argument);
        }

        start.Environment.Remove("NO_COLOR");
        start.Environment["TERM"] = "xterm-256color";
        foreach (var (name, value) in surroundings)
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        process.StandardInput.Close();
        var shown = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        return shown;
    }
}
