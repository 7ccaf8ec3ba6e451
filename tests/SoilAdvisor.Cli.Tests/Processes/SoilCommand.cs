using System.Diagnostics;
using System.Text;

namespace SoilAdvisor.Cli.Tests.Processes;

/// <summary>Runs the command as a process of its own, as a terminal would.</summary>
internal static class SoilCommand
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(4);

    /// <summary>Top folder of the project.</summary>
    public static string Top { get; } = FindTop();

    /// <summary>Runs it in the top folder.</summary>
    public static Task<Ended> Run(params IReadOnlyList<string> arguments) => Run(Top, [], arguments);

    /// <summary>Runs it.</summary>
    /// <param name="folder">Where it stands.</param>
    /// <param name="surroundings">Environment variables beside those of this process.</param>
    /// <param name="arguments">As typed.</param>
    public static async Task<Ended> Run(string folder, IReadOnlyList<(string Name, string Value)> surroundings, IReadOnlyList<string> arguments)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "soil.dll"));
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        // Whatever the machine that runs the tests has set must not decide them.
        start.Environment.Remove("COLUMNS");
        start.Environment.Remove("NO_COLOR");
        foreach (var (name, value) in surroundings)
        {
            start.Environment[name] = value;
        }

        using var stop = new CancellationTokenSource(Patience);
        using var process = Process.Start(start)!;
        try
        {
            var results = process.StandardOutput.ReadToEndAsync(stop.Token);
            var talk = process.StandardError.ReadToEndAsync(stop.Token);
            await process.WaitForExitAsync(stop.Token);
            return new Ended(process.ExitCode, await results, await talk);
        }
        finally
        {
            if (!process.HasExited)
            {
                process.Kill(entireProcessTree: true);
            }
        }
    }

    private static string FindTop()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "SoilAdvisor.sln")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException($"SoilAdvisor.sln stands nowhere above {AppContext.BaseDirectory}.");
    }
}
