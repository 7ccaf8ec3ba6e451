namespace SoilAdvisor.ReferenceTables.Kinds;

/// <summary>Whether a table must be there.</summary>
internal enum Presence
{
    /// <summary>It may be missing.</summary>
    Optional,

    /// <summary>Its folder is not complete without it.</summary>
    Required,
}
