namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>What a published spread is used for. The table says it, not the program.</summary>
public enum SpreadUse
{
    /// <summary>Shown and never calculated with. Default.</summary>
    Information,

    /// <summary>The spread of one routine composite whose number of cores is not known: it holds sampling and analysis both.</summary>
    Composite,

    /// <summary>The laboratory's own share, combined with the field's where the number of cores is known.</summary>
    Laboratory,

    /// <summary>The field's share, divided by the square root of the number of cores.</summary>
    Cores,

    /// <summary>Two results of two laboratories compared.</summary>
    TwoLaboratories,

    /// <summary>Two results of two seasons compared: a sentence, never a correction.</summary>
    TwoSeasons,
}
