namespace SoilAdvisor.Agronomy.Materials.Metals;

/// <summary>What a limit on a metal bounds.</summary>
public enum MetalLimitKind
{
    /// <summary>Highest content at which the material may be spread at all, mg/kg dry.</summary>
    Ceiling,

    /// <summary>Content up to which no load has to be counted, mg/kg dry.</summary>
    NoLoadCounted,

    /// <summary>Most that may ever be spread on one ground, or over the years that the limit names, mass per area.</summary>
    Cumulative,

    /// <summary>Most that may be spread in a year, mass per area.</summary>
    Annual,

    /// <summary>Highest content for each percent of P2O5 that the label guarantees, mg/kg.</summary>
    ForEachPercentPhosphate,
}
