namespace SoilAdvisor.Agronomy.Crops;

/// <summary>How a rate table goes from test to rate.</summary>
public enum RateTableKind
{
    /// <summary>A printed rate for each class.</summary>
    ClassTable,

    /// <summary>Removal in the maintenance range; removal plus a share of the deficit below it; nothing above.</summary>
    BuildUpAndMaintenance,
}
