namespace SoilAdvisor.Agronomy.Plans;

/// <summary>Which ground of a bed is spread. Rates are per acre of that ground.</summary>
public enum SpreadBasis
{
    /// <summary>The bed top only. Default, printed as an assumption when not said.</summary>
    BedTop,

    /// <summary>Bed and path, by centre spacing.</summary>
    BedAndPath,

    /// <summary>A band beside the row: the bed top is still the area that the rate refers to.</summary>
    Band,
}
