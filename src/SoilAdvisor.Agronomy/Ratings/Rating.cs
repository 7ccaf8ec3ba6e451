using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>A value read on a guide's scale.</summary>
/// <param name="Guide">Id of the guide.</param>
/// <param name="Reading">The reading as received.</param>
/// <param name="Amount">The amount in the scale's unit.</param>
/// <param name="Scale">The scale.</param>
/// <param name="ClassIndex">Index of the class on the scale.</param>
/// <param name="Cec">Exchange capacity that fixed the limits, meq/100 g; null when they do not depend on it.</param>
/// <param name="Assumptions">What was assumed.</param>
public sealed record Rating(
    string Guide,
    Reading Reading,
    Amount Amount,
    RatingScale Scale,
    int ClassIndex,
    decimal? Cec,
    IReadOnlyList<Assumption> Assumptions)
{
    /// <summary>What was rated.</summary>
    public Analyte Analyte => Reading.Analyte;

    /// <summary>The class.</summary>
    public RatingClass Class => Scale.Classes[ClassIndex];

    /// <summary>Where it stands in our words.</summary>
    public Standing Standing => Class.Standing;

    /// <summary>Where the limits stand.</summary>
    public Citation Source => Class.Source;
}
