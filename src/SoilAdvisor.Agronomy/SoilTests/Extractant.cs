namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>Solution that a laboratory shakes the soil with. Numbers from different extractants are different tests.</summary>
public enum Extractant
{
    /// <summary>Mehlich-3.</summary>
    Mehlich3,

    /// <summary>Mehlich-1 (double acid).</summary>
    Mehlich1,

    /// <summary>Modified Morgan (ammonium acetate, pH 4.8).</summary>
    ModifiedMorgan,

    /// <summary>Morgan (sodium acetate, pH 4.8).</summary>
    Morgan,

    /// <summary>Bray P1.</summary>
    BrayP1,

    /// <summary>Olsen (sodium bicarbonate).</summary>
    Olsen,

    /// <summary>Neutral ammonium acetate.</summary>
    AmmoniumAcetate,

    /// <summary>Ammonium nitrate (potassium and magnesium in the United Kingdom).</summary>
    AmmoniumNitrate,

    /// <summary>Phosphoric acid (manganese in Ontario).</summary>
    PhosphoricAcid,

    /// <summary>DTPA.</summary>
    Dtpa,

    /// <summary>Hot water (boron).</summary>
    HotWater,

    /// <summary>Water.</summary>
    Water,
}
