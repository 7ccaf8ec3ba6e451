namespace SoilAdvisor.Agronomy.FieldWork;

/// <summary>Checks that a plan may propose.</summary>
public enum ProposedCheckKind
{
    /// <summary>A nitrate test of the soil before sidedressing.</summary>
    NitrateTest,

    /// <summary>A strip that gets nothing, to compare with.</summary>
    UntreatedStrip,

    /// <summary>The soil test again at the same season and depth, by the same laboratory.</summary>
    Resampling,
}
