namespace SoilAdvisor.Cli.Tests.Processes;

/// <summary>How a run of the command ended.</summary>
/// <param name="ExitCode">Its exit code.</param>
/// <param name="Results">Standard output.</param>
/// <param name="Talk">Standard error.</param>
public sealed record Ended(int ExitCode, string Results, string Talk)
{
    /// <summary>Everything, for a failing assertion's message.</summary>
    public override string ToString() => $"exit code {ExitCode}\n--- standard output\n{Results}\n--- standard error\n{Talk}";
}
