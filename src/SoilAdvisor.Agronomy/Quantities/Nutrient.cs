namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>
/// What is balanced on a bed. Oxide and element are different members, and so are total and available; nothing converts silently.
/// Boron and the other micronutrients are never balanced: they have their own guard.
/// </summary>
public enum Nutrient
{
    /// <summary>Plant-available nitrogen, N, in the season of application.</summary>
    AvailableN,

    /// <summary>Phosphate, P2O5, available in the season: counts toward a need.</summary>
    AvailableP2O5,

    /// <summary>Phosphate, P2O5, in all forms: counts toward a ceiling.</summary>
    TotalP2O5,

    /// <summary>Potash, K2O.</summary>
    K2O,

    /// <summary>Calcium, Ca.</summary>
    Ca,

    /// <summary>Magnesium, Mg.</summary>
    Mg,

    /// <summary>Sulfur, S.</summary>
    S,

    /// <summary>Sodium, Na.</summary>
    Na,

    /// <summary>Chloride, Cl.</summary>
    Cl,

    /// <summary>Organic carbon, C.</summary>
    C,

    /// <summary>Neutralising value as calcium carbonate equivalent, CaCO3.</summary>
    CalciumCarbonate,
}
