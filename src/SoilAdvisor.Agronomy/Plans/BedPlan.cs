using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Agronomy.YearsAhead;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>Everything said about one bed.</summary>
/// <param name="Bed">The bed.</param>
/// <param name="State">How far it could be planned.</param>
/// <param name="Summary">One sentence first: nothing needed, or what to do.</param>
/// <param name="Ratings">Ratings of its soil test.</param>
/// <param name="Need">Needs and credits.</param>
/// <param name="Lime">Lime; null when no requirement could be computed (then in Refused).</param>
/// <param name="Applications">What to spread, in order.</param>
/// <param name="Balances">Floor, ceiling and supply by nutrient.</param>
/// <param name="Shortfalls">Requirements not met; empty for none.</param>
/// <param name="CoverCrops">Cover crops for its gap; null without a gap.</param>
/// <param name="Findings">Organic findings.</param>
/// <param name="Cautions">Cautions for the reader who acts.</param>
/// <param name="Warnings">Warnings in plain sentences.</param>
/// <param name="Refused">What has no answer: pointer inside the bed, and why.</param>
/// <param name="Assumptions">What was assumed.</param>
/// <param name="Cost">Cost of priced materials and lime; null when nothing is priced.</param>
/// <param name="Working">Lines of working; empty when not asked for.</param>
public sealed record BedPlan(
    Bed Bed,
    BedState State,
    string Summary,
    IReadOnlyList<Rating> Ratings,
    BedNeed Need,
    LimePlan? Lime,
    IReadOnlyList<MaterialApplication> Applications,
    IReadOnlyList<NutrientBalance> Balances,
    IReadOnlyList<Shortfall> Shortfalls,
    CoverCropSelection? CoverCrops,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<Caution> Cautions,
    IReadOnlyList<string> Warnings,
    IReadOnlyList<(string Pointer, Refusal Refusal)> Refused,
    IReadOnlyList<Assumption> Assumptions,
    Money? Cost,
    IReadOnlyList<WorkingLine> Working)
{
    /// <summary>How sure each rating is, or why that is not known; found by the rating itself.</summary>
    public IReadOnlyDictionary<Rating, Answer<RatingCertainty>> Certainties { get; init; } = new Dictionary<Rating, Answer<RatingCertainty>>(ReferenceEqualityComparer.Instance);

    /// <summary>The guide's indices that its soil test means to be read by, each with its rating or why there is none.</summary>
    public IReadOnlyList<(GuideIndex Index, Answer<Rating> Answer)> Indices { get; init; } = [];

    /// <summary>Its soil test held against limits of law, apart from every class.</summary>
    public IReadOnlyList<CeilingFinding> Ceilings { get; init; } = [];

    /// <summary>What fills the exchange of its soil, or why that cannot be said; null where the laboratory was not asked for the cations.</summary>
    public Answer<CationBalance>? Cations { get; init; }

    /// <summary>Its nitrogen through the season; null where no planting has a nitrogen rate.</summary>
    public NitrogenInTime? NitrogenInTime { get; init; }

    /// <summary>Where its phosphorus and potassium are heading; null where both stand in their targets and nobody asked.</summary>
    public YearsAheadPlan? YearsAhead { get; init; }

    /// <summary>Compost for structure, or why there is none; null where none was asked for.</summary>
    public Answer<StructureDressing>? StructureDressing { get; init; }
}
