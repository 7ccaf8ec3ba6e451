using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Agronomy.YearsAhead;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.Beds;

/// <summary>One bed with everything settled but the choice of materials.</summary>
/// <param name="Bed">The bed.</param>
/// <param name="Ratings">Ratings of its soil test.</param>
/// <param name="Need">Needs and credits.</param>
/// <param name="Lime">Its lime.</param>
/// <param name="Floors">Needs less credits.</param>
/// <param name="Rules">What makes a model of it, for other sets of materials too.</param>
/// <param name="Offered">Materials to choose from.</param>
/// <param name="Model">The choice as a model.</param>
/// <param name="LeftOut">Why listed materials were left out.</param>
/// <param name="Refused">What has no answer so far.</param>
/// <param name="Working">Receives the working; null for none.</param>
internal sealed record PreparedBed(
    Bed Bed,
    IReadOnlyList<Rating> Ratings,
    BedNeed Need,
    BedLime Lime,
    IReadOnlyList<PlantingFloor> Floors,
    BedModel Rules,
    IReadOnlyList<OfferedMaterial> Offered,
    MaterialModel Model,
    IReadOnlyCollection<string> LeftOut,
    IReadOnlyList<(string Pointer, Refusal Refusal)> Refused,
    WorkingSheet? Working)
{
    /// <summary>How sure each rating is.</summary>
    public required Dictionary<Rating, Answer<RatingCertainty>> Certainties { get; init; }

    /// <summary>The sum of its cations; null where the test is not meant for one.</summary>
    public required Answer<CationBalance>? Cations { get; init; }

    /// <summary>Indices of several readings that the guide rates.</summary>
    public required IReadOnlyList<(GuideIndex Index, Answer<Rating> Answer)> Indices { get; init; }

    /// <summary>Compost for structure, or why there is none; null where none was asked for.</summary>
    public Answer<StructureDressing>? Dressing { get; init; }

    /// <summary>How much phosphate may come along where none is needed.</summary>
    public required PhosphorusLimit Phosphorus { get; init; }
}
