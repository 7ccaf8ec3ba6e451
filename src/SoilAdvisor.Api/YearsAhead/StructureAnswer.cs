using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Plans;

namespace SoilAdvisor.Api.YearsAhead;

/// <summary>Compost for structure and what it costs in phosphorus, or why there is none.</summary>
internal sealed record StructureAnswer(CitedAs By) : Sourced(By)
{
    public string? Material { get; init; }

    public string? Name { get; init; }

    public Quantity? Asked { get; init; }

    public RateAnswer? Rate { get; init; }

    public VolumeAnswer? Volume { get; init; }

    /// <summary>Why it is less than asked.</summary>
    public string? LimitedBy { get; init; }

    public QuantityRange? TotalP2O5 { get; init; }

    /// <summary>Years of harvests that take as much phosphate away.</summary>
    public decimal? YearsOfRemoval { get; init; }

    /// <summary>Expected rise of the phosphorus test, mg/kg.</summary>
    public RiseAnswer? TestRise { get; init; }

    public QuantityRange? Nitrogen { get; init; }

    public MoneyAnswer? Cost { get; init; }

    public Fault? Refused { get; init; }
}
