using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>
/// Ordered classes of one analyte by one method in one unit, and to whom they apply. The only way from a number to a class.
/// Checked at loading: ascending, from open below to open above, no gap, no overlap (reference ranges may leave gaps).
/// </summary>
public sealed class RatingScale
{
    // Laboratories print 12 in as 30 cm; half an inch tells no layer of a guide from the next.
    private const double SameDepthInches = 0.5;

    private readonly ClassLimits limits;

    /// <summary>Makes a scale.</summary>
    /// <param name="analyte">What is rated.</param>
    /// <param name="method">The method it was calibrated for.</param>
    /// <param name="unit">Unit of its limits.</param>
    /// <param name="printedDecimals">Decimals a value is rounded to before look-up, where the guide prints whole-number bins; null for none.</param>
    /// <param name="classes">Classes in ascending order; at least one.</param>
    public RatingScale(Analyte analyte, ScaleMethod method, ReportingUnit unit, int? printedDecimals, IReadOnlyList<RatingClass> classes)
    {
        (Analyte, Method, Unit, PrintedDecimals) = (analyte, method, unit, printedDecimals);
        Classes = classes.Count > 0 ? classes : throw new ArgumentException("A scale needs a class.", nameof(classes));
        limits = new ClassLimits(classes, printedDecimals);
    }

    /// <summary>What is rated.</summary>
    public Analyte Analyte { get; }

    /// <summary>The method it was calibrated for.</summary>
    public ScaleMethod Method { get; }

    /// <summary>Unit of its limits.</summary>
    public ReportingUnit Unit { get; }

    /// <summary>Decimals a value is rounded to before look-up; null for none.</summary>
    public int? PrintedDecimals { get; }

    /// <summary>Classes in ascending order.</summary>
    public IReadOnlyList<RatingClass> Classes { get; }

    /// <summary>Crop id or group it is meant for; null for all crops.</summary>
    public string? CropGroup { get; init; }

    /// <summary>Textures it is meant for; empty for all.</summary>
    public IReadOnlyList<SoilGroup> SoilGroups { get; init; } = [];

    /// <summary>Part of the region; null for all.</summary>
    public string? Subregion { get; init; }

    /// <summary>Spans that other values of the test must lie in; empty for none.</summary>
    public IReadOnlyList<ScaleCondition> Conditions { get; init; } = [];

    /// <summary>When the sample must have been taken; null for a routine sample.</summary>
    public SampleTiming? Timing { get; init; }

    /// <summary>Layer that must have been sampled, to half an inch; null where the guide does not tie its limits to one.</summary>
    public SampleDepth? Depth { get; init; }

    /// <summary>True when a limit or the scale itself depends on the exchange capacity.</summary>
    public bool NeedsCec => limits.AreSloped || AsksForCec();

    /// <summary>True when it is meant for this test and context. A condition that they leave open is not met.</summary>
    /// <param name="test">The soil test.</param>
    /// <param name="context">Crop, texture, subregion.</param>
    public bool AppliesTo(SoilTest test, in RatingContext context) =>
        (CropGroup is null || string.Equals(CropGroup, context.CropGroup, StringComparison.Ordinal))
        && FitsTexture(test, context)
        && (Subregion is null || string.Equals(Subregion, context.Subregion, StringComparison.OrdinalIgnoreCase))
        && (Timing is null || test.Timing == Timing)
        && FitsDepth(test)
        && (!NeedsCec || CecOf(test) is not null)
        && MeetsConditions(test);

    /// <summary>The guide's index whose values these classes rate; null for a reading.</summary>
    public string? Index { get; init; }

    /// <summary>Index of the class that holds a value; -1 when a reference range leaves it out. Every rating goes through here.</summary>
    /// <param name="value">Value in the scale's unit.</param>
    /// <param name="cec">Exchange capacity, meq/100 g; needed when <see cref="NeedsCec"/>.</param>
    public int IndexOf(ScaleValue value, ScaleValue cec) => limits.IndexOf(value.Number, cec.Number);

    /// <summary>The same for printed numbers.</summary>
    /// <param name="value">Value in the scale's unit.</param>
    /// <param name="cec">Exchange capacity, meq/100 g; needed when <see cref="NeedsCec"/>.</param>
    public int IndexOf(decimal value, decimal? cec) => IndexOf(ScaleValue.From(value), ScaleValue.From(cec ?? 0));

    /// <summary>Lower limit of a class for an exchange capacity; null for open below.</summary>
    /// <param name="index">Index of the class.</param>
    /// <param name="cec">Exchange capacity, meq/100 g.</param>
    public decimal? LowerOf(int index, decimal? cec) => Classes[index].Lower + (Classes[index].LowerPerCec * (cec ?? 0));

    /// <summary>Upper limit of a class for an exchange capacity; null for open above.</summary>
    /// <param name="index">Index of the class.</param>
    /// <param name="cec">Exchange capacity, meq/100 g.</param>
    public decimal? UpperOf(int index, decimal? cec) => Classes[index].Upper + (Classes[index].UpperPerCec * (cec ?? 0));

    internal static decimal? CecOf(SoilTest test) =>
        test.Of(Analyte.CationExchangeCapacity) is { Unit: ReportingUnit.MilliequivalentsPer100Grams, Amount: { Kind: AmountKind.Measured } amount } ? amount.Number : null;

    internal bool FitsTexture(SoilTest test, in RatingContext context) =>
        SoilGroups.Count == 0 || ((context.SoilGroup ?? test.SoilGroup) is { } soil && SoilGroups.Contains(soil));

    internal bool FitsDepth(SoilTest test) => Depth is null
        || (test.Depth is { } sampled
            && Math.Abs(sampled.From.Inches - Depth.From.Inches) <= SameDepthInches
            && Math.Abs(sampled.To.Inches - Depth.To.Inches) <= SameDepthInches);

    // Plain loops: every scale of a guide is asked for every reading, and most have no condition.
    private bool AsksForCec()
    {
        for (var i = 0; i < Conditions.Count; i++)
        {
            if (Conditions[i].Analyte == Analyte.CationExchangeCapacity)
            {
                return true;
            }
        }

        return false;
    }

    private bool MeetsConditions(SoilTest test)
    {
        for (var i = 0; i < Conditions.Count; i++)
        {
            if (!Conditions[i].IsMetBy(test, this))
            {
                return false;
            }
        }

        return true;
    }
}
