using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>Label or laboratory figures of a material, percent by mass, as received. Oxide and element have different members.</summary>
internal sealed record WrittenAnalysis
{
    public WrittenNumber? N { get; init; }

    /// <summary>Ammonium nitrogen (NH4-N) by a laboratory; needs N beside it.</summary>
    public WrittenNumber? AmmoniumN { get; init; }

    /// <summary>Nitrate nitrogen (NO3-N) by a laboratory; needs N beside it.</summary>
    public WrittenNumber? NitrateN { get; init; }

    public WrittenNumber? P2O5 { get; init; }

    public WrittenNumber? K2O { get; init; }

    /// <summary>Phosphorus as the element, in the place of p2o5.</summary>
    public WrittenNumber? Phosphorus { get; init; }

    /// <summary>Potassium as the element, in the place of k2o.</summary>
    public WrittenNumber? Potassium { get; init; }

    public WrittenNumber? Moisture { get; init; }

    /// <summary>Calcium carbonate equivalent of a liming material; may lie above 100.</summary>
    public WrittenNumber? NeutralisingValue { get; init; }

    /// <summary>Calcium, as the element.</summary>
    public WrittenNumber? Calcium { get; init; }

    /// <summary>Magnesium, as the element.</summary>
    public WrittenNumber? Magnesium { get; init; }

    /// <summary>Sulfur, as the element.</summary>
    public WrittenNumber? Sulfur { get; init; }

    /// <summary>Sodium, as the element.</summary>
    public WrittenNumber? Sodium { get; init; }

    /// <summary>Organic carbon.</summary>
    public WrittenNumber? Carbon { get; init; }

    /// <summary>Carbon to nitrogen ratio, one number.</summary>
    public WrittenNumber? CarbonToNitrogen { get; init; }

    /// <summary>Heavy metals, total, in dry matter whatever the basis of the rest.</summary>
    public IReadOnlyList<WrittenMetal>? Metals { get; init; }

    /// <summary>Electrical conductivity with the extract it was read in.</summary>
    public WrittenSalt? Salt { get; init; }

    /// <summary>Laboratory or label that printed the figures.</summary>
    public string? From { get; init; }

    /// <summary>Day of the test.</summary>
    public string? Date { get; init; }

    /// <summary>Grind by what passes each sieve, cumulative. Give this or sieveClasses, not both.</summary>
    public IReadOnlyList<WrittenSieve>? Sieves { get; init; }

    /// <summary>Grind by what lies between sieves; the classes add up to 100.</summary>
    public IReadOnlyList<WrittenSieveClass>? SieveClasses { get; init; }

    /// <summary>Effective value that the label prints.</summary>
    public WrittenScore? EffectiveValue { get; init; }

    /// <summary>as-spread (default) or dry.</summary>
    public string? Basis { get; init; }
}
