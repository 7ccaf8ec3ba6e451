namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>Why two results for the same ground differ.</summary>
public enum SpreadKind
{
    /// <summary>Sampling and analysis together: composites of one field, each taken and analysed anew. Default.</summary>
    SamplingAndAnalysis,

    /// <summary>One laboratory analyses one sample again.</summary>
    LaboratoryRepeat,

    /// <summary>Several laboratories analyse one sample.</summary>
    BetweenLaboratories,

    /// <summary>Places within one field.</summary>
    Field,

    /// <summary>The same place at another time of the year.</summary>
    Season,
}
