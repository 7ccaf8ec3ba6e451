namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>Plant-available nitrogen, N.</summary>
public readonly struct AvailableN : IBalancedForm
{
    /// <inheritdoc/>
    public static string Symbol => "N";

    /// <inheritdoc/>
    public static Nutrient Nutrient => Nutrient.AvailableN;
}

/// <summary>Total nitrogen, N, of a material or a stand; not available in one season.</summary>
public readonly struct TotalN : IForm
{
    /// <inheritdoc/>
    public static string Symbol => "total N";
}

/// <summary>Organic nitrogen, N, of a material: total less ammonium less nitrate.</summary>
public readonly struct OrganicN : IForm
{
    /// <inheritdoc/>
    public static string Symbol => "organic N";
}

/// <summary>Nitrogen of ammonium, NH4-N, of a material.</summary>
public readonly struct AmmoniumN : IForm
{
    /// <inheritdoc/>
    public static string Symbol => "NH4-N";
}

/// <summary>Available phosphate, P2O5.</summary>
public readonly struct AvailableP2O5 : IBalancedForm
{
    /// <inheritdoc/>
    public static string Symbol => "P2O5";

    /// <inheritdoc/>
    public static Nutrient Nutrient => Nutrient.AvailableP2O5;
}

/// <summary>Phosphate in all forms, P2O5.</summary>
public readonly struct TotalP2O5 : IBalancedForm
{
    /// <inheritdoc/>
    public static string Symbol => "total P2O5";

    /// <inheritdoc/>
    public static Nutrient Nutrient => Nutrient.TotalP2O5;
}

/// <summary>Elemental phosphorus, P: what soil tests report.</summary>
public readonly struct P : IForm
{
    /// <inheritdoc/>
    public static string Symbol => "P";
}

/// <summary>Potash, K2O.</summary>
public readonly struct K2O : IBalancedForm
{
    /// <inheritdoc/>
    public static string Symbol => "K2O";

    /// <inheritdoc/>
    public static Nutrient Nutrient => Nutrient.K2O;
}

/// <summary>Elemental potassium, K: what soil tests report.</summary>
public readonly struct K : IForm
{
    /// <inheritdoc/>
    public static string Symbol => "K";
}

/// <summary>Magnesium, Mg.</summary>
public readonly struct Mg : IBalancedForm
{
    /// <inheritdoc/>
    public static string Symbol => "Mg";

    /// <inheritdoc/>
    public static Nutrient Nutrient => Nutrient.Mg;
}

/// <summary>Calcium, Ca.</summary>
public readonly struct Ca : IBalancedForm
{
    /// <inheritdoc/>
    public static string Symbol => "Ca";

    /// <inheritdoc/>
    public static Nutrient Nutrient => Nutrient.Ca;
}

/// <summary>Neutralising value counted as pure calcium carbonate, CaCO3.</summary>
public readonly struct CalciumCarbonate : IBalancedForm
{
    /// <inheritdoc/>
    public static string Symbol => "CaCO3";

    /// <inheritdoc/>
    public static Nutrient Nutrient => Nutrient.CalciumCarbonate;
}

/// <summary>Magnesia, MgO.</summary>
public readonly struct MgO : IForm
{
    /// <inheritdoc/>
    public static string Symbol => "MgO";
}

/// <summary>Burnt lime as an oxide, CaO.</summary>
public readonly struct CaO : IForm
{
    /// <inheritdoc/>
    public static string Symbol => "CaO";
}

/// <summary>Nitrate, NO3, counted whole.</summary>
public readonly struct Nitrate : IForm
{
    /// <inheritdoc/>
    public static string Symbol => "NO3";
}

/// <summary>Nitrogen of nitrate, NO3-N: what guides count.</summary>
public readonly struct NitrateNitrogen : IForm
{
    /// <inheritdoc/>
    public static string Symbol => "NO3-N";
}

/// <summary>Sulfate, SO4, counted whole.</summary>
public readonly struct Sulfate : IForm
{
    /// <inheritdoc/>
    public static string Symbol => "SO4";
}

/// <summary>Sulfur of sulfate, SO4-S: what guides count.</summary>
public readonly struct SulfateSulfur : IForm
{
    /// <inheritdoc/>
    public static string Symbol => "SO4-S";
}
