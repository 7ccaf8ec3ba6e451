namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>The soils a lime method is made for.</summary>
public enum LimeSoil
{
    /// <summary>The publication makes no difference.</summary>
    Any,

    /// <summary>Mineral soils only.</summary>
    Mineral,

    /// <summary>Organic soils (muck, peat) only.</summary>
    Organic,
}
