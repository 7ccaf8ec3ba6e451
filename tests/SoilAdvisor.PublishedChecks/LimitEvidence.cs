namespace SoilAdvisor.PublishedChecks;

/// <summary>What a row beside a class limit rests on; each kind has a folder of its own, so that no count mixes them.</summary>
public enum LimitEvidence
{
    /// <summary>Read in the publication, a stored copy or a restatement of it: a published check.</summary>
    Published,

    /// <summary>Recalled from a named publication: keeps a table from changing unnoticed, proves nothing.</summary>
    FromMemory,

    /// <summary>What print leaves open, such as a value between two whole-number bins or at an end that no class claims: a reading of ours or of the trade.</summary>
    Convention,
}
