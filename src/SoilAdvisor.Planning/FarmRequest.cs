using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Agronomy.Materials.Metals;
using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Agronomy.CoverCrops.Seasons;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Ratings;

namespace SoilAdvisor.Planning;

/// <summary>What a farm asks to be planned.</summary>
/// <param name="Farm">Name as given; null when none was.</param>
/// <param name="Date">Date the plan is made for.</param>
/// <param name="Guide">The guide asked for; null leaves the choice to <see cref="GuideChoice"/>.</param>
/// <param name="Region">ISO 3166-2 code; null when not said.</param>
/// <param name="Beds">The beds; their ids differ.</param>
/// <param name="Materials">What the farm has or can buy; empty opens the whole table of materials, without prices.</param>
/// <param name="Currency">ISO 4217 code of all prices; null takes it from the prices.</param>
/// <param name="Frost">Frost dates; null when not said.</param>
/// <param name="LimeMethod">The lime method asked for; null leaves the choice to the buffer and the region.</param>
/// <param name="WithWorking">True to write down every line of arithmetic. The numbers are the same either way.</param>
/// <param name="Subregion">Part of the guide's region as the guide names it, where its limits depend on it; null when not said.</param>
public sealed record FarmRequest(
    string? Farm,
    DateOnly Date,
    Guide? Guide,
    string? Region,
    IReadOnlyList<Bed> Beds,
    IReadOnlyList<MaterialOffer> Materials,
    string? Currency,
    FrostDates? Frost,
    LimeMethod? LimeMethod,
    bool WithWorking,
    string? Subregion = null)
{
    /// <summary>What the farm can buy and carry out.</summary>
    public FarmLimits Limits { get; init; } = FarmLimits.None;

    /// <summary>Soil temperature by month; null when not said.</summary>
    public SoilTemperatures? SoilTemperature { get; init; }

    /// <summary>What is measured and spread with.</summary>
    public FieldMeasures Measures { get; init; } = FieldMeasures.Of(null, null, null, null, null);

    /// <summary>The rule that tested metals are held against; null: none is applied, and that is said.</summary>
    public MetalRule? MetalRule { get; init; }

    /// <summary>Years to look ahead, 1 to 20; null takes 5 for what is not in its target.</summary>
    public int? Years { get; init; }

    /// <summary>What is asked of a season of cover crops; null when none is.</summary>
    public SeasonWish? CoverSeason { get; init; }

    /// <summary>What is known of the farm's climate beside its frost dates; null when nothing was said.</summary>
    public FarmClimate? Climate { get; init; }

    /// <summary>Weights of reasons for and against cover crops.</summary>
    public CoverCropWeights CoverCropWeights { get; init; } = CoverCropWeights.Standard;
}
