namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>What a laboratory measured. Elements are elements here, never oxides.</summary>
public enum Analyte
{
    /// <summary>Phosphorus.</summary>
    P,

    /// <summary>Potassium.</summary>
    K,

    /// <summary>Calcium.</summary>
    Ca,

    /// <summary>Magnesium.</summary>
    Mg,

    /// <summary>Sulfur.</summary>
    S,

    /// <summary>Sodium.</summary>
    Na,

    /// <summary>Chloride.</summary>
    Cl,

    /// <summary>Boron.</summary>
    B,

    /// <summary>Zinc.</summary>
    Zn,

    /// <summary>Manganese.</summary>
    Mn,

    /// <summary>Copper.</summary>
    Cu,

    /// <summary>Iron.</summary>
    Fe,

    /// <summary>Molybdenum.</summary>
    Mo,

    /// <summary>Aluminium.</summary>
    Al,

    /// <summary>Lead, extractable: never to be read on a table of total lead.</summary>
    Pb,

    /// <summary>Nitrate, counted as nitrogen.</summary>
    NitrateN,

    /// <summary>Ammonium, counted as nitrogen.</summary>
    AmmoniumN,

    /// <summary>Soil pH.</summary>
    Ph,

    /// <summary>pH of a lime-requirement buffer after mixing with soil; meaningless without the buffer's name.</summary>
    BufferPh,

    /// <summary>Organic matter.</summary>
    OrganicMatter,

    /// <summary>Cation exchange capacity.</summary>
    CationExchangeCapacity,

    /// <summary>Electrical conductivity of an extract: soluble salts.</summary>
    ElectricalConductivity,

    /// <summary>Exchangeable or buffer acidity.</summary>
    Acidity,

    /// <summary>Lime that raises a kilogram of soil by one unit of pH: mg calcium carbonate per kg and pH.</summary>
    LimeBufferCapacity,
}
