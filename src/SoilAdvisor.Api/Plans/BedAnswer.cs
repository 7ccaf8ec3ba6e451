using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Cations;
using SoilAdvisor.Api.Checks;
using SoilAdvisor.Api.CoverCrops;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Lime;
using SoilAdvisor.Api.NitrogenSupply;
using SoilAdvisor.Api.Ratings;
using SoilAdvisor.Api.Working;
using SoilAdvisor.Api.YearsAhead;

namespace SoilAdvisor.Api.Plans;

/// <summary>Everything said about one bed. Of a bed that could not be read only id, state and refusals are given.</summary>
internal sealed record BedAnswer(string Bed, string State, string Summary, CitedAs By) : Sourced(By)
{
    public string? SoilTest { get; init; }

    public IReadOnlyList<string>? Crops { get; init; }

    public Quantity? Area { get; init; }

    public string? AreaBasis { get; init; }

    public string? AreaShown { get; init; }

    public IReadOnlyList<RatingAnswer> Ratings { get; init; } = [];

    public IReadOnlyList<IndexAnswer>? Indices { get; init; }

    public IReadOnlyList<CeilingAnswer>? Ceilings { get; init; }

    public CationsAnswer? Cations { get; init; }

    public IReadOnlyList<NeedAnswer> Need { get; init; } = [];

    public IReadOnlyList<CreditAnswer> Credits { get; init; } = [];

    public LimePlanAnswer? Lime { get; init; }

    public IReadOnlyList<ApplicationAnswer> Materials { get; init; } = [];

    public NitrogenInTimeAnswer? NitrogenInTime { get; init; }

    public IReadOnlyList<BalanceAnswer> Supplied { get; init; } = [];

    public IReadOnlyList<ShortfallAnswer> Shortfalls { get; init; } = [];

    public YearsAheadAnswer? YearsAhead { get; init; }

    public StructureAnswer? StructureDressing { get; init; }

    public CoverCropSelectionAnswer? CoverCrops { get; init; }

    public IReadOnlyList<FindingAnswer> Findings { get; init; } = [];

    public IReadOnlyList<Catalogues.CautionEntry> Cautions { get; init; } = [];

    public IReadOnlyList<string> Warnings { get; init; } = [];

    public MoneyAnswer? Cost { get; init; }

    public IReadOnlyList<Fault>? Refused { get; init; }

    public IReadOnlyList<AssumptionAnswer> Assumptions { get; init; } = [];

    public IReadOnlyList<WorkingLineAnswer>? Working { get; init; }
}
