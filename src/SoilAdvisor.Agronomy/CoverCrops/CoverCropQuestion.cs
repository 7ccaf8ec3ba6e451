using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>Which cover crops fit a gap: everything the answer rests on.</summary>
/// <param name="Gap">Time the bed stands free.</param>
public sealed record CoverCropQuestion(Gap Gap)
{
    /// <summary>What they are wanted for, from <see cref="CoverCropChoices.Aims"/>; empty takes cover and weeds.</summary>
    public IReadOnlyList<string> Aims { get; init; } = [];

    /// <summary>How heavily each kind of reason counts.</summary>
    public CoverCropWeights Weights { get; init; } = CoverCropWeights.Standard;

    /// <summary>What is known of the climate.</summary>
    public FarmClimate Climate { get; init; } = FarmClimate.Unknown;

    /// <summary>Crop before the gap; null when not known.</summary>
    public Crop? LastCrop { get; init; }

    /// <summary>Crop after the gap; null when not known.</summary>
    public Crop? NextCrop { get; init; }

    /// <summary>Ground to sow; null without a bed.</summary>
    public Area? Area { get; init; }

    /// <summary>True when the bed needs phosphorus: the aim phosphorus is then counted too.</summary>
    public bool PhosphorusShort { get; init; }

    /// <summary>By how much P2O5 it is short; null when not known.</summary>
    public MassPerArea? PhosphateShort { get; init; }

    /// <summary>Nematodes and diseases recorded on the bed, as in the table of hosts; a host of one is left out.</summary>
    public IReadOnlyList<string> Problems { get; init; } = [];

    /// <summary>Whether the bed is irrigated; null when not said.</summary>
    public bool? Irrigated { get; init; }

    /// <summary>Federal termination zone, 1 to 4; null when not said.</summary>
    public int? TerminationZone { get; init; }
}
