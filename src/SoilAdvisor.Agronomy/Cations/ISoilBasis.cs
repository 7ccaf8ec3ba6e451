namespace SoilAdvisor.Agronomy.Cations;

/// <summary>What a charge is counted in: a mass of soil or a volume of it. The two differ by the density of the sample and never mix.</summary>
public interface ISoilBasis
{
    /// <summary>Unit of a charge on this basis, for example meq/100g.</summary>
    static abstract string Unit { get; }
}
