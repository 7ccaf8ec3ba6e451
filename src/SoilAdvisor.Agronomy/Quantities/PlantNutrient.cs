namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>A nutrient as guides recommend it: N, oxides for phosphorus and potassium, elements for the rest.</summary>
public enum PlantNutrient
{
    /// <summary>Nitrogen, N.</summary>
    N,

    /// <summary>Phosphate, P2O5.</summary>
    P2O5,

    /// <summary>Potash, K2O.</summary>
    K2O,

    /// <summary>Calcium, Ca.</summary>
    Ca,

    /// <summary>Magnesium, Mg.</summary>
    Mg,

    /// <summary>Sulfur, S.</summary>
    S,

    /// <summary>Boron, B.</summary>
    B,

    /// <summary>Zinc, Zn.</summary>
    Zn,

    /// <summary>Manganese, Mn.</summary>
    Mn,

    /// <summary>Copper, Cu.</summary>
    Cu,

    /// <summary>Iron, Fe.</summary>
    Fe,

    /// <summary>Molybdenum, Mo.</summary>
    Mo,
}
