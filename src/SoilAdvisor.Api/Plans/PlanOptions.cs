using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Climate;
using SoilAdvisor.Api.FieldWork;
using SoilAdvisor.Api.CoverSeason;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.NitrogenSupply;

namespace SoilAdvisor.Api.Plans;

/// <summary>Choices beside the data, as received.</summary>
internal sealed record PlanOptions
{
    /// <summary>Day the plan is made for; left out, the day of the request, which is then said.</summary>
    public string? Date { get; init; }

    public WrittenFrost? Frost { get; init; }

    /// <summary>Climate for cover crops: monthly temperatures, hardiness zone, frost dates.</summary>
    public WrittenClimate? Climate { get; init; }

    /// <summary>How heavily kinds of reasons for and against cover crops count, by kind.</summary>
    public IReadOnlyDictionary<string, WrittenNumber>? CoverCropWeights { get; init; }

    /// <summary>Lime method id; left out, the one made for the buffer and the region.</summary>
    public string? LimeMethod { get; init; }

    /// <summary>ISO 4217; left out, that of the prices.</summary>
    public string? Currency { get; init; }

    /// <summary>Mean soil temperature by month; left out, releases are shown over the published temperatures.</summary>
    public WrittenSoilTemperature? SoilTemperature { get; init; }
    /// <summary>Asks for a season of cover crops over all beds with gaps; left out, none is planned.</summary>
    public WrittenSeason? CoverSeason { get; init; }

    /// <summary>What the farm can buy and carry out; left out, nothing is limited.</summary>
    public WrittenFarmLimits? Limits { get; init; }

    /// <summary>Years to look ahead, 1 to 20; left out, 5 for phosphorus and potassium that do not stand in their target.</summary>
    public WrittenNumber? Years { get; init; }

    /// <summary>What is measured and spread with; left out, usual measures, which are then said.</summary>
    public WrittenMeasures? Measures { get; init; }

    /// <summary>Id of the rule that tested metals of materials are held against; left out, none.</summary>
    public string? MetalRule { get; init; }
}
