using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>The nitrogen in one unit of mass of a material as it is spread, by form.</summary>
/// <param name="TotalLow">Total nitrogen, low end.</param>
/// <param name="TotalHigh">Total nitrogen, high end.</param>
/// <param name="AtOnceLow">Nitrate and the ammonium that is kept, low end: there on the day of spreading. Zero where no form was tested.</param>
/// <param name="AtOnceHigh">The same, high end.</param>
/// <param name="Organic">Organic nitrogen by test; null where ammonium was not tested, and then it is at most the total.</param>
public sealed record NitrogenContent(MassShare TotalLow, MassShare TotalHigh, MassShare AtOnceLow, MassShare AtOnceHigh, MassShare? Organic)
{
    /// <summary>Organic nitrogen, low end: by test, else the total that no form is known of.</summary>
    public MassShare OrganicLow => Organic ?? TotalLow;

    /// <summary>Organic nitrogen, high end.</summary>
    public MassShare OrganicHigh => Organic ?? TotalHigh;
}
