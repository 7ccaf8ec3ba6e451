using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>The one method that a scale was calibrated for.</summary>
/// <param name="Extractant">Extractant; null for analytes that take none, and for nitrate, ammonium and chloride, which any usual solution takes out whole.</param>
/// <param name="Detection">What the guide says of detection.</param>
/// <param name="Procedure">Procedure; null where the guide prints none.</param>
public readonly record struct ScaleMethod(Extractant? Extractant, ScaleDetection Detection, Procedure? Procedure)
{
    /// <summary>Whether a reading by this method may be rated.</summary>
    /// <param name="method">Method of the reading.</param>
    public bool Covers(Method method) =>
        (Extractant is null || method.Extractant == Extractant)
        && (Procedure is null || method.Procedure is null || method.Procedure == Procedure)
        && Detection switch
        {
            ScaleDetection.Icp => method.Detection == SoilTests.Detection.Icp,
            ScaleDetection.Colorimetric => method.Detection == SoilTests.Detection.Colorimetric,
            _ => true,
        };

    /// <summary>In words, for example "mehlich-3, icp".</summary>
    public override string ToString()
    {
        var parts = new List<string>(3);
        if (Extractant is { } extractant)
        {
            parts.Add(Words.Extractants.IdOf(extractant));
        }

        if (Detection is ScaleDetection.Icp or ScaleDetection.Colorimetric)
        {
            parts.Add(Detection == ScaleDetection.Icp ? "icp" : "colorimetric");
        }

        if (Procedure is { } procedure)
        {
            parts.Add(procedure.ToString());
        }

        return parts.Count == 0 ? "method not stated" : string.Join(", ", parts);
    }
}
