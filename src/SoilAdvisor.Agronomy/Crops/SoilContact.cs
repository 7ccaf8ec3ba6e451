namespace SoilAdvisor.Agronomy.Crops;

/// <summary>Whether the part that is eaten touches the soil or soil splashes: decides 120 or 90 days after raw manure. The certifier may see it otherwise.</summary>
public enum SoilContact
{
    /// <summary>It does, or nobody said. Default, the stricter.</summary>
    Contact,

    /// <summary>It does not.</summary>
    NoContact,
}
