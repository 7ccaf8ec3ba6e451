using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>What lies between two sieves, as received.</summary>
internal sealed record WrittenSieveClass
{
    /// <summary>Sieve that it passes; left out for the coarsest class.</summary>
    public WrittenNumber? Passing { get; init; }

    /// <summary>Sieve that it stays on; left out for the finest class.</summary>
    public WrittenNumber? RetainedOn { get; init; }

    /// <summary>Percent by mass.</summary>
    public WrittenNumber? Percent { get; init; }
}
