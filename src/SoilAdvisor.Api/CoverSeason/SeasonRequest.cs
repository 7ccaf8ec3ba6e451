using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Climate;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverSeason;

/// <summary>Asks which cover crop to grow when on every bed.</summary>
internal sealed record SeasonRequest
{
    /// <summary>Name of the farm, echoed.</summary>
    public string? Farm { get; init; }

    public string? Region { get; init; }

    /// <summary>Day the season is planned on, which stamps the calendar; left out, the day of the request, which is then said.</summary>
    public string? Date { get; init; }

    /// <summary>The beds of a plan; their soil tests are not looked at here.</summary>
    public IReadOnlyList<WrittenBed>? Beds { get; init; }

    public WrittenFrost? Frost { get; init; }

    public WrittenClimate? Climate { get; init; }

    /// <summary>What the cover crops are for; left out, cover and weeds.</summary>
    public IReadOnlyList<string>? Aims { get; init; }

    /// <summary>How heavily kinds of reasons count, by kind; left out, the usual weights, which are shown.</summary>
    public IReadOnlyDictionary<string, WrittenNumber>? Weights { get; init; }

    public WrittenSeason? CoverSeason { get; init; }
}
