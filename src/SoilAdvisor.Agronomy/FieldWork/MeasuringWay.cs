namespace SoilAdvisor.Agronomy.FieldWork;

/// <summary>How an amount is measured out.</summary>
public enum MeasuringWay
{
    /// <summary>By half buckets and quarter scoops, with a published density.</summary>
    ByVolume,

    /// <summary>To a mark of the scale.</summary>
    ToScaleMark,

    /// <summary>As planned: every mark of the scale would pass a limit or be nothing.</summary>
    Exactly,
}
