using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>Label or laboratory figures of a material, percent by mass, as received. Phosphorus and potassium are counted as oxides, as labels do.</summary>
internal sealed record WrittenAnalysis
{
    public WrittenNumber? N { get; init; }

    /// <summary>Ammonium nitrogen (NH4-N) by a laboratory; needs N beside it.</summary>
    public WrittenNumber? AmmoniumN { get; init; }

    /// <summary>Nitrate nitrogen (NO3-N) by a laboratory; needs N beside it.</summary>
    public WrittenNumber? NitrateN { get; init; }

    public WrittenNumber? P2O5 { get; init; }

    public WrittenNumber? K2O { get; init; }

    public WrittenNumber? Moisture { get; init; }

    /// <summary>Calcium carbonate equivalent of a liming material; may lie above 100.</summary>
    public WrittenNumber? NeutralisingValue { get; init; }

    /// <summary>Calcium of a liming material, as the element.</summary>
    public WrittenNumber? Calcium { get; init; }

    /// <summary>Magnesium of a liming material, as the element.</summary>
    public WrittenNumber? Magnesium { get; init; }

    /// <summary>Grind by what passes each sieve, cumulative. Give this or sieveClasses, not both.</summary>
    public IReadOnlyList<WrittenSieve>? Sieves { get; init; }

    /// <summary>Grind by what lies between sieves; the classes add up to 100.</summary>
    public IReadOnlyList<WrittenSieveClass>? SieveClasses { get; init; }

    /// <summary>Effective value that the label prints.</summary>
    public WrittenScore? EffectiveValue { get; init; }

    /// <summary>as-spread (default) or dry.</summary>
    public string? Basis { get; init; }
}
