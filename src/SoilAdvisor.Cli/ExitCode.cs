namespace SoilAdvisor.Cli;

/// <summary>How the command ends. The numbers are part of the contract with scripts.</summary>
internal static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>A finding blocks the plan, a need cannot be met, a bed was refused, or checked tables have faults.</summary>
    public const int Blocked = 1;

    /// <summary>A file, an option or a value cannot be used.</summary>
    public const int BadInput = 2;

    /// <summary>The service or the reference tables cannot be used.</summary>
    public const int Unavailable = 3;

    /// <summary>Stopped from the keyboard.</summary>
    public const int Stopped = 130;
}
