namespace SoilAdvisor.Api;

/// <summary>Exit codes of the service, a part of those that the command uses.</summary>
internal static class Exit
{
    /// <summary>Ended as asked.</summary>
    public const int Done = 0;

    /// <summary>The reference tables or the address to listen on cannot be used.</summary>
    public const int Unavailable = 3;
}
