using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>Label or laboratory figures of a material, percent by mass, as received. Phosphorus and potassium are counted as oxides, as labels do.</summary>
internal sealed record WrittenAnalysis
{
    public WrittenNumber? N { get; init; }

    public WrittenNumber? P2O5 { get; init; }

    public WrittenNumber? K2O { get; init; }

    public WrittenNumber? Moisture { get; init; }

    /// <summary>as-spread (default) or dry.</summary>
    public string? Basis { get; init; }
}
