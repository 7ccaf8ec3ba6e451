namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>Which recommended nutrients are balanced, and which soil test stands behind each.</summary>
public static class PlantNutrients
{
    /// <summary>Its place in the balance; null for boron and the other micronutrients, which are never optimised.</summary>
    /// <param name="nutrient">The nutrient.</param>
    public static Nutrient? Balanced(this PlantNutrient nutrient) => nutrient switch
    {
        PlantNutrient.N => Nutrient.AvailableN,
        PlantNutrient.P2O5 => Nutrient.AvailableP2O5,
        PlantNutrient.K2O => Nutrient.K2O,
        PlantNutrient.Ca => Nutrient.Ca,
        PlantNutrient.Mg => Nutrient.Mg,
        PlantNutrient.S => Nutrient.S,
        _ => null,
    };
}
