namespace SoilAdvisor.Agronomy.Working;

/// <summary>Where a number stands: a source of the bibliography, the place inside it, and how it came to us.</summary>
/// <param name="SourceId">Id in the bibliography (reference-tables, sources.json). Never blank.</param>
/// <param name="Locator">Table, page or equation inside the source; null where the source has one statement only.</param>
/// <param name="Evidence">Whether the value was read or recalled.</param>
public sealed record Citation(string SourceId, string? Locator, Evidence Evidence)
{
    /// <summary>Our own arithmetic on values that carry their own citation.</summary>
    public static Citation OurArithmetic { get; } = new("our-arithmetic", null, Evidence.Ours);

    /// <summary>A choice of this project, said to the user.</summary>
    public static Citation OurJudgement { get; } = new("our-judgement", null, Evidence.Ours);

    /// <summary>What the trade does without a publication that was read.</summary>
    public static Citation CommonPractice { get; } = new("common-practice", null, Evidence.CommonPractice);

    /// <summary>Exact unit definitions.</summary>
    public static Citation UnitDefinitions { get; } = new("unit-definitions", null, Evidence.FromMemory);

    /// <summary>Standard atomic weights.</summary>
    public static Citation AtomicMasses { get; } = new("atomic-masses", null, Evidence.FromMemory);
}
