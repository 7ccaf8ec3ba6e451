using System.Globalization;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>One published figure or statement of a cover crop.</summary>
/// <param name="Property">Kebab-case property, for example days-to-flower.</param>
/// <param name="Value">The figure; null where a range or words are printed.</param>
/// <param name="Low">Low end; null for none.</param>
/// <param name="High">High end; null for none.</param>
/// <param name="Unit">Unit; empty for words.</param>
/// <param name="Text">The statement in our words; null for a figure.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Note">Remark; null for none.</param>
public sealed record CoverCropValue(string Property, decimal? Value, decimal? Low, decimal? High, string Unit, string? Text, Citation Source, string? Note)
{
    internal decimal? Figure => Value ?? Low ?? High;

    internal decimal? Least => Low ?? Value ?? High;

    internal decimal? Most => High ?? Value ?? Low;

    /// <summary>"35 to 40", or one number.</summary>
    internal string Shown => Least == Most
        ? string.Create(CultureInfo.InvariantCulture, $"{Least:#,0.######}")
        : string.Create(CultureInfo.InvariantCulture, $"{Least:#,0.######} to {Most:#,0.######}");
}
