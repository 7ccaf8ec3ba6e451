namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>How a value that needs no extractant was measured: pH, buffer pH, salts, organic matter, exchange capacity.</summary>
public enum Procedure
{
    /// <summary>pH in water, one part soil to one part water.</summary>
    PhWater11,

    /// <summary>pH in water, one part soil to two parts water.</summary>
    PhWater12,

    /// <summary>pH in water, one part soil to two and a half parts water.</summary>
    PhWater125,

    /// <summary>pH in water, one part soil to five parts water.</summary>
    PhWater15,

    /// <summary>pH in 0.01 M calcium chloride; about half a unit below water.</summary>
    PhCalciumChloride,

    /// <summary>pH in 1 M potassium chloride.</summary>
    PhPotassiumChloride,

    /// <summary>Mehlich buffer, starts at 6.6.</summary>
    BufferMehlich,

    /// <summary>Modified Mehlich buffer (calcium in place of barium).</summary>
    BufferModifiedMehlich,

    /// <summary>SMP buffer, starts at 7.5.</summary>
    BufferSmp,

    /// <summary>Sikora buffer, built to imitate SMP.</summary>
    BufferSikora,

    /// <summary>Adams-Evans buffer, starts at 8.0.</summary>
    BufferAdamsEvans,

    /// <summary>Moore-Sikora buffer, built to imitate Adams-Evans.</summary>
    BufferMooreSikora,

    /// <summary>Woodruff buffer.</summary>
    BufferWoodruff,

    /// <summary>Lime buffer capacity read 30 minutes after one addition of calcium hydroxide.</summary>
    CapacityThirtyMinutes,

    /// <summary>Lime buffer capacity at equilibrium.</summary>
    CapacityEquilibrium,

    /// <summary>Salts in the saturated-paste extract (ECe).</summary>
    SaltsSaturatedPaste,

    /// <summary>Salts in one part soil to one part water.</summary>
    Salts11,

    /// <summary>Salts in one part soil to two parts water.</summary>
    Salts12,

    /// <summary>Organic matter by loss on ignition.</summary>
    LossOnIgnition,

    /// <summary>Organic matter by Walkley-Black.</summary>
    WalkleyBlack,

    /// <summary>Exchange capacity as the sum of cations and acidity.</summary>
    Summation,

    /// <summary>Exchange capacity by displacement.</summary>
    Displacement,
}
