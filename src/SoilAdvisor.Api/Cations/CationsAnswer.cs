using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Cations;

/// <summary>What fills the exchange of a soil, by the sum of its cations; or why that cannot be said. Information: it rates nothing and sets no rate.</summary>
internal sealed record CationsAnswer
{
    public string Standing { get; } = "information";

    /// <summary>Exchange capacity by the sum.</summary>
    public Quantity? Capacity { get; init; }

    /// <summary>Sum of calcium, magnesium, potassium and sodium.</summary>
    public Quantity? Bases { get; init; }

    /// <summary>Bases in percent of the capacity.</summary>
    public decimal? BaseSaturation { get; init; }

    /// <summary>Calcium to magnesium, by charge.</summary>
    public decimal? CalciumToMagnesium { get; init; }

    public IReadOnlyList<CationShareAnswer>? Parts { get; init; }

    public AcidityShareAnswer? Acidity { get; init; }

    /// <summary>The set of milliequivalent weights used.</summary>
    public WeightsAnswer? Weights { get; init; }

    public IReadOnlyList<CationStatementAnswer>? Warnings { get; init; }

    /// <summary>What trials found about chasing ratios.</summary>
    public IReadOnlyList<CationStatementAnswer>? Trials { get; init; }

    public IReadOnlyList<AssumptionAnswer>? Assumptions { get; init; }

    public IReadOnlyList<WorkingLineAnswer>? Working { get; init; }

    public Fault? Refused { get; init; }
}
