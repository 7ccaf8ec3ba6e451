namespace SoilAdvisor.Agronomy.CoverCrops.Seed;

/// <summary>How seed gets into the ground.</summary>
public enum WayOfSowing
{
    /// <summary>In rows with a drill or a hand seeder.</summary>
    Drilled,

    /// <summary>Thrown and raked or worked in.</summary>
    Broadcast,

    /// <summary>Thrown and left on the surface.</summary>
    Surface,
}
