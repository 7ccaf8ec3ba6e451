using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Plans;

/// <summary>What a farm can buy and carry out, as received.</summary>
internal sealed record WrittenFarmLimits
{
    /// <summary>Most materials on one bed.</summary>
    public WrittenNumber? ProductsPerBed { get; init; }

    /// <summary>Most materials on the whole farm.</summary>
    public WrittenNumber? Products { get; init; }

    /// <summary>Least rate that can be spread evenly, for example {"value": 50, "unit": "lb/acre"}.</summary>
    public WrittenQuantity? SmallestRate { get; init; }

    /// <summary>Cost of carrying one material to one bed once.</summary>
    public WrittenMoney? LabourPerPass { get; init; }

    /// <summary>Most that materials, freight and labour may cost.</summary>
    public WrittenMoney? Budget { get; init; }

    /// <summary>Most of single nutrients on every bed.</summary>
    public IReadOnlyList<WrittenCeiling>? Ceilings { get; init; }

    /// <summary>Money that one pound of a nutrient above what is needed counts as when plans are compared; left out, 0.05.</summary>
    public WrittenMoney? ExcessPenalty { get; init; }

    /// <summary>Longest time for the search, 1 to 30; left out, 10.</summary>
    public WrittenNumber? Seconds { get; init; }
}
