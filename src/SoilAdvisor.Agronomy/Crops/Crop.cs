using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>A crop and what is published of it.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Name">Trade name.</param>
/// <param name="LatinName">Botanical name; null where not given.</param>
/// <param name="Family">Botanical family.</param>
/// <param name="EdiblePart">What is eaten.</param>
/// <param name="SoilContact">Whether that part touches the soil.</param>
/// <param name="BoronResponse">high, medium, low or none; null where no source ranks it.</param>
/// <param name="SensitiveToBoron">True for crops that boron injures.</param>
/// <param name="Values">Published figures; the first of a property is the one used, the others compete.</param>
/// <param name="Removals">Published removals; the first that fits is used.</param>
/// <param name="Source">Where the row stands.</param>
public sealed record Crop(
    string Id,
    string Name,
    string? LatinName,
    string Family,
    string EdiblePart,
    SoilContact SoilContact,
    string? BoronResponse,
    bool SensitiveToBoron,
    IReadOnlyList<CropValue> Values,
    IReadOnlyList<Removal> Removals,
    Citation Source)
{
    /// <summary>The figure used for a property; null when none is held.</summary>
    /// <param name="property">Kebab-case property.</param>
    public CropValue? ValueOf(string property) => Values.FirstOrDefault(v => v.Property == property);
}
