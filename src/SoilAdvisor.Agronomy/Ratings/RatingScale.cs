using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>
/// Ordered classes of one analyte by one method in one unit, and to whom they apply. The only way from a number to a class.
/// Checked at loading: ascending, from open below to open above, no gap, no overlap (reference ranges may leave gaps).
/// </summary>
public sealed class RatingScale
{
    /// <summary>Makes a scale.</summary>
    /// <param name="analyte">What is rated.</param>
    /// <param name="method">The method it was calibrated for.</param>
    /// <param name="unit">Unit of its limits.</param>
    /// <param name="cropGroup">Crop id or group it is meant for; null for all crops.</param>
    /// <param name="soilGroups">Textures it is meant for; empty for all.</param>
    /// <param name="subregion">Part of the region; null for all.</param>
    /// <param name="cecFrom">Exchange capacity above which it applies, meq/100 g; null for any.</param>
    /// <param name="cecTo">Highest exchange capacity it applies to, meq/100 g; null for any.</param>
    /// <param name="printedDecimals">Decimals a value is rounded to before look-up, where the guide prints whole-number bins; null for none.</param>
    /// <param name="classes">Classes in ascending order; at least one.</param>
    public RatingScale(
        Analyte analyte,
        ScaleMethod method,
        ReportingUnit unit,
        string? cropGroup,
        IReadOnlyList<SoilGroup> soilGroups,
        string? subregion,
        decimal? cecFrom,
        decimal? cecTo,
        int? printedDecimals,
        IReadOnlyList<RatingClass> classes)
    {
        (Analyte, Method, Unit, CropGroup, SoilGroups, Subregion) = (analyte, method, unit, cropGroup, soilGroups, subregion);
        (CecFrom, CecTo, PrintedDecimals) = (cecFrom, cecTo, printedDecimals);
        Classes = classes.Count > 0 ? classes : throw new ArgumentException("A scale needs a class.", nameof(classes));
        NeedsCec = cecFrom is not null || cecTo is not null || classes.Any(c => c.LowerPerCec != 0 || c.UpperPerCec != 0);
    }

    /// <summary>What is rated.</summary>
    public Analyte Analyte { get; }

    /// <summary>The method it was calibrated for.</summary>
    public ScaleMethod Method { get; }

    /// <summary>Unit of its limits.</summary>
    public ReportingUnit Unit { get; }

    /// <summary>Crop id or group it is meant for; null for all crops.</summary>
    public string? CropGroup { get; }

    /// <summary>Textures it is meant for; empty for all.</summary>
    public IReadOnlyList<SoilGroup> SoilGroups { get; }

    /// <summary>Part of the region; null for all.</summary>
    public string? Subregion { get; }

    /// <summary>Exchange capacity above which it applies, meq/100 g; null for any.</summary>
    public decimal? CecFrom { get; }

    /// <summary>Highest exchange capacity it applies to, meq/100 g; null for any.</summary>
    public decimal? CecTo { get; }

    /// <summary>Decimals a value is rounded to before look-up; null for none.</summary>
    public int? PrintedDecimals { get; }

    /// <summary>Classes in ascending order.</summary>
    public IReadOnlyList<RatingClass> Classes { get; }

    /// <summary>True when a limit or the scale itself depends on the exchange capacity.</summary>
    public bool NeedsCec { get; }

    /// <summary>True when it is meant for this context. A condition that the context leaves open is not met.</summary>
    /// <param name="context">Crop, texture, subregion, exchange capacity.</param>
    public bool AppliesTo(in RatingContext context) =>
        (CropGroup is null || string.Equals(CropGroup, context.CropGroup, StringComparison.Ordinal))
        && (SoilGroups.Count == 0 || (context.SoilGroup is { } soil && SoilGroups.Contains(soil)))
        && (Subregion is null || string.Equals(Subregion, context.Subregion, StringComparison.OrdinalIgnoreCase))
        && (!NeedsCec || (context.Cec is { } cec && !(cec <= CecFrom) && !(cec > CecTo)));

    /// <summary>Index of the class that holds a value; -1 when a reference range leaves it out.</summary>
    /// <param name="value">Value in the scale's unit.</param>
    /// <param name="cec">Exchange capacity, meq/100 g; needed when <see cref="NeedsCec"/>.</param>
    public int IndexOf(decimal value, decimal? cec)
    {
        var looked = PrintedDecimals is { } decimals ? Math.Round(value, decimals, MidpointRounding.AwayFromZero) : value;
        for (var i = 0; i < Classes.Count; i++)
        {
            if (Holds(Classes[i], looked, cec ?? 0))
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>Lower limit of a class for an exchange capacity; null for open below.</summary>
    /// <param name="index">Index of the class.</param>
    /// <param name="cec">Exchange capacity, meq/100 g.</param>
    public decimal? LowerOf(int index, decimal? cec) => Classes[index].Lower + (Classes[index].LowerPerCec * (cec ?? 0));

    /// <summary>Upper limit of a class for an exchange capacity; null for open above.</summary>
    /// <param name="index">Index of the class.</param>
    /// <param name="cec">Exchange capacity, meq/100 g.</param>
    public decimal? UpperOf(int index, decimal? cec) => Classes[index].Upper + (Classes[index].UpperPerCec * (cec ?? 0));

    // The first class of a scale is open below even where a 0 is printed: nothing lies under zero.
    private bool Holds(RatingClass candidate, decimal value, decimal cec) =>
        (candidate.Lower is not { } lower || IsPrintedZero(candidate) || (candidate.LowerIncluded ? value >= lower + (candidate.LowerPerCec * cec) : value > lower + (candidate.LowerPerCec * cec)))
        && (candidate.Upper is not { } upper || (candidate.UpperIncluded ? value <= upper + (candidate.UpperPerCec * cec) : value < upper + (candidate.UpperPerCec * cec)));

    private bool IsPrintedZero(RatingClass candidate) => ReferenceEquals(candidate, Classes[0]) && candidate.Lower == 0 && candidate.LowerPerCec == 0;
}
