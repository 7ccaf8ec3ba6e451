namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>How the trade writes each nutrient.</summary>
public static class NutrientNames
{
    /// <summary>Short form with its basis, for example "P2O5" or "total P2O5".</summary>
    /// <param name="nutrient">Which.</param>
    public static string Symbol(this Nutrient nutrient) => nutrient switch
    {
        Nutrient.AvailableN => "N",
        Nutrient.AvailableP2O5 => "P2O5",
        Nutrient.TotalP2O5 => "total P2O5",
        Nutrient.CalciumCarbonate => "CaCO3",
        _ => nutrient.ToString(),
    };

    /// <summary>Plain words, for example "phosphate (P2O5)".</summary>
    /// <param name="nutrient">Which.</param>
    public static string Words(this Nutrient nutrient) => nutrient switch
    {
        Nutrient.AvailableN => "nitrogen (N)",
        Nutrient.AvailableP2O5 => "phosphate (P2O5)",
        Nutrient.TotalP2O5 => "total phosphate (P2O5)",
        Nutrient.K2O => "potash (K2O)",
        Nutrient.Ca => "calcium (Ca)",
        Nutrient.Mg => "magnesium (Mg)",
        Nutrient.S => "sulfur (S)",
        Nutrient.Na => "sodium (Na)",
        Nutrient.Cl => "chloride (Cl)",
        Nutrient.C => "organic carbon (C)",
        Nutrient.CalciumCarbonate => "neutralising value (CaCO3)",
        _ => throw new ArgumentOutOfRangeException(nameof(nutrient)),
    };
}
