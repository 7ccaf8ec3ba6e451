namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>One tested sample. Which readings it holds is the laboratory's affair; an analyte appears at most once.</summary>
/// <param name="Id">The user's id, echoed.</param>
/// <param name="Sampled">Date of sampling; null when not said.</param>
/// <param name="Lab">Laboratory as written; null when not said.</param>
/// <param name="Depth">Layer sampled; null when not said.</param>
/// <param name="SoilGroup">Texture; null when not said.</param>
/// <param name="FreeLime">Whether the soil fizzes with acid; null when not said.</param>
/// <param name="PoundsPerAcreFactor">lb/acre for one mg/kg by the laboratory's own statement; null when not said (then 2, printed).</param>
/// <param name="Readings">The readings.</param>
/// <param name="LabRecommendations">Rates that the laboratory printed.</param>
public sealed record SoilTest(
    string Id,
    DateOnly? Sampled,
    string? Lab,
    SampleDepth? Depth,
    SoilGroup? SoilGroup,
    bool? FreeLime,
    decimal? PoundsPerAcreFactor,
    IReadOnlyList<Reading> Readings,
    IReadOnlyList<LabRecommendation> LabRecommendations)
{
    /// <summary>Cores mixed into the sample; null when not said.</summary>
    public int? Cores { get; init; }

    /// <summary>Bulk density of the sampled layer in the field, g/cm3, above 0 and at most 2.65; null when not said.</summary>
    public decimal? BulkDensity { get; init; }

    /// <summary>When in the crop's life the sample was taken; null for a routine sample.</summary>
    public SampleTiming? Timing { get; init; }

    /// <summary>The reading of an analyte; null when the report has none.</summary>
    /// <param name="analyte">Which.</param>
    public Reading? Of(Analyte analyte)
    {
        for (var i = 0; i < Readings.Count; i++)
        {
            if (Readings[i].Analyte == analyte)
            {
                return Readings[i];
            }
        }

        return null;
    }
}
