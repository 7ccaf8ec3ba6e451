using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>A cover crop species and what is published of it.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Name">Trade name.</param>
/// <param name="LatinName">Botanical name; null where not given.</param>
/// <param name="Family">Botanical family.</param>
/// <param name="LifeCycle">annual, biennial or perennial in the source's words.</param>
/// <param name="Season">warm, cool or both.</param>
/// <param name="Values">Published figures; the first of a property is used, the others compete.</param>
/// <param name="Source">Where the row stands.</param>
public sealed record CoverCrop(
    string Id,
    string Name,
    string? LatinName,
    string Family,
    string LifeCycle,
    string Season,
    IReadOnlyList<CoverCropValue> Values,
    Citation Source)
{
    internal const string Legumes = "Fabaceae";
    internal const string Grasses = "Poaceae";
    internal const string Brassicas = "Brassicaceae";

    // Cold that comes with the first frosts: 28 °F and milder.
    private const decimal FirstFrosts = 28;

    /// <summary>True where the first frosts of fall kill it.</summary>
    public bool IsFrostTender => Season == "warm" || Kill is { } kill && kill.Figure >= FirstFrosts;

    /// <summary>True where it is kept for more than one season.</summary>
    public bool LivesLonger =>
        Season != "warm" && (LifeCycle.Contains("perennial", StringComparison.Ordinal) || LifeCycle.StartsWith("biennial", StringComparison.Ordinal));

    internal bool Overwinters => !IsFrostTender && (LifeCycle.Contains("winter", StringComparison.Ordinal) || LivesLonger);

    internal CoverCropValue? Kill => ValueOf("kill-temperature");

    /// <summary>The figure used for a property; null when none is held.</summary>
    /// <param name="property">Kebab-case property.</param>
    public CoverCropValue? ValueOf(string property) => Values.FirstOrDefault(v => v.Property == property);

    internal IEnumerable<CoverCropValue> AllOf(string property) => Values.Where(v => v.Property == property);
}
