namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>
/// By which rule a state counts effective lime: neutralising value, fineness and, in some states, moisture. A requirement in one index is met
/// by a stone scored in the same index.
/// </summary>
public enum EffectiveLimeIndex
{
    /// <summary>The report counts effective lime and does not name the rule.</summary>
    NotNamed,

    /// <summary>Oregon lime score; 100 is pure and fine.</summary>
    OregonLimeScore,

    /// <summary>Iowa effective calcium carbonate equivalent (ECCE).</summary>
    IowaEcce,

    /// <summary>Kansas effective calcium carbonate (ECC).</summary>
    KansasEcc,

    /// <summary>Minnesota effective neutralising power (ENP).</summary>
    MinnesotaEnp,

    /// <summary>Ohio effective neutralising power (ENP).</summary>
    OhioEnp,

    /// <summary>Wisconsin neutralising index, in grades such as 60-69.</summary>
    WisconsinNeutralisingIndex,

    /// <summary>Missouri effective neutralising material (ENM), counted as calcium.</summary>
    MissouriEnm,

    /// <summary>New York effective neutralising value (ENV).</summary>
    NewYorkEnv,

    /// <summary>Kentucky and Mississippi relative neutralising value (RNV).</summary>
    KentuckyRnv,

    /// <summary>Georgia: reagent calcium carbonate, against which ground limestone is less effective.</summary>
    GeorgiaReagent,
}
