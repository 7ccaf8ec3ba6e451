using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverSeason;

/// <summary>What is asked of a season of cover crops, as received. An empty object asks for one with nothing limited.</summary>
internal sealed record WrittenSeason
{
    /// <summary>Most species on the farm; left out, no limit.</summary>
    public WrittenNumber? MostSpecies { get; init; }

    /// <summary>Points that each species after the first costs; left out, 1, which is said.</summary>
    public WrittenNumber? PointsPerSpecies { get; init; }

    /// <summary>Months between a cover crop and any crop of its family on the same bed; left out, none are asked.</summary>
    public WrittenNumber? FamilyGapMonths { get; init; }

    /// <summary>true uses only the seed on hand.</summary>
    public bool? OnlySeedOnHand { get; init; }

    /// <summary>Seed by species; a species that is not listed can be bought in any amount, without a price.</summary>
    public IReadOnlyList<WrittenSeed>? Seed { get; init; }
}
