namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>What the label or a laboratory says of a liming material. What is left out is the table's, or not known.</summary>
public sealed record StoneLabel
{
    /// <summary>Calcium carbonate equivalent, %, 1 to 200; not capped at 100.</summary>
    public decimal? NeutralisingValue { get; init; }

    /// <summary>Calcium, % Ca.</summary>
    public decimal? Calcium { get; init; }

    /// <summary>Magnesium, % Mg.</summary>
    public decimal? Magnesium { get; init; }

    /// <summary>Water, %; below 100. Counted only where the state counts it.</summary>
    public decimal? Moisture { get; init; }

    /// <summary>How finely it is ground.</summary>
    public ISieveAnalysis? Sieves { get; init; }

    /// <summary>The effective value that the label prints.</summary>
    public LabelScore? Score { get; init; }
}
