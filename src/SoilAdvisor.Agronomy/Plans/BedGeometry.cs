using System.Globalization;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;
using UnitsNet.Units;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>From a bed's measures to the ground that is spread. Rates are per acre of that ground.</summary>
public static class BedGeometry
{
    // A stated area and the product of stated sides may differ by rounding, not by more.
    private const double LargestMismatch = 0.01;

    /// <summary>The ground that is spread.</summary>
    /// <param name="length">Length of the bed; null when only an area is given.</param>
    /// <param name="width">Width of the bed top; null when only an area is given.</param>
    /// <param name="area">Area; null when length and width are given.</param>
    /// <param name="centerSpacing">From bed centre to bed centre; needed for bed and path with length and width.</param>
    /// <param name="spread">Which ground is spread; null takes the bed top, and says so.</param>
    /// <param name="working">Receives the line; null for none.</param>
    /// <returns>
    /// The ground, or a refusal: bed-area-missing, bed-measure-out-of-range, bed-area-conflict, center-spacing-missing, center-spacing-too-small.
    /// </returns>
    public static Answer<BedGround> Ground(Length? length, Length? width, Area? area, Length? centerSpacing, SpreadBasis? spread, WorkingSheet? working = null)
    {
        if (area is null && (length is null || width is null))
        {
            return Refuse("bed-area-missing", "The bed has no area: length and width, or an area, must be given.", "Give length and width, for example 100 ft and 30 in, or the area in sq ft.");
        }

        double?[] measures = [length?.Meters, width?.Meters, area?.SquareMeters, centerSpacing?.Meters];
        if (measures.Any(m => m is { } value && !(value > 0 && double.IsFinite(value))))
        {
            return Refuse("bed-measure-out-of-range", "A measure of the bed is not above zero.", "Give each measure as a number above zero with its unit.");
        }

        var basis = spread ?? SpreadBasis.BedTop;
        var assumptions = Assumptions(spread, basis);
        return length is { } l && width is { } w
            ? FromSides(l, w, area, centerSpacing, basis, assumptions, working)
            : FromArea(area!.Value, basis, assumptions);
    }

    private static Answer<BedGround> FromSides(Length length, Length width, Area? stated, Length? centerSpacing, SpreadBasis basis, List<Assumption> assumptions, WorkingSheet? working)
    {
        var given = Origin.Given("measures of the bed");
        if (basis == SpreadBasis.BedAndPath)
        {
            if (centerSpacing is not { } spacing)
            {
                return Refuse("center-spacing-missing", "Bed and path are spread, but the distance between bed centres is not known.", "Give centerSpacing, for example 48 in, or spread the bed top only.");
            }

            if (spacing < width)
            {
                return Refuse("center-spacing-too-small", $"The bed centres are {Shown(spacing)} apart and the bed is {Shown(width)} wide.", "Measure from the middle of one bed to the middle of the next.");
            }

            return Agreed(BedFormulas.BedAndPathArea.Of((length, spacing), working, given, given), stated, $"{Shown(spacing)} (bed and path) × {Shown(length)}", basis, assumptions);
        }

        return Agreed(BedFormulas.BedTopArea.Of((length, width), working, given, given), stated, $"{Shown(width)} × {Shown(length)}", basis, assumptions);
    }

    private static Answer<BedGround> Agreed(Area found, Area? stated, string product, SpreadBasis basis, List<Assumption> assumptions) =>
        stated is { } said && Math.Abs(said.SquareMeters - found.SquareMeters) > LargestMismatch * found.SquareMeters
            ? Refuse("bed-area-conflict", $"The stated area is {Shown(said)}, but {product} is {Shown(found)}.", "Give length and width, or the area, not both; or correct one of them.")
            : Answer<BedGround>.Given(new BedGround(found, basis, $"{product} = {Shown(found)}", assumptions));

    private static Answer<BedGround> FromArea(Area area, SpreadBasis basis, List<Assumption> assumptions)
    {
        if (basis == SpreadBasis.BedAndPath)
        {
            assumptions.Add(new Assumption("area-includes-path", "The stated area is taken as bed and path together.", Citation.OurJudgement));
        }

        return Answer<BedGround>.Given(new BedGround(area, basis, area.Unit == AreaUnit.SquareFoot ? Shown(area) : $"{PlainNumber.Of(area.Value)} {Area.GetAbbreviation(area.Unit, CultureInfo.InvariantCulture)} = {Shown(area)}", assumptions));
    }

    private static List<Assumption> Assumptions(SpreadBasis? said, SpreadBasis basis)
    {
        var assumptions = new List<Assumption>();
        if (said is null)
        {
            assumptions.Add(new Assumption("spread-bed-top", "Only the bed top is spread, not the path: rates are per acre of bed top.", Citation.OurJudgement));
        }
        else if (basis == SpreadBasis.Band)
        {
            assumptions.Add(new Assumption("band-rate-on-bed-top", "The band gets the whole amount of the bed: rates are per acre of bed top.", Citation.OurJudgement));
        }

        return assumptions;
    }

    private static string Shown(Area area) => $"{PlainNumber.Of(area.SquareFeet)} sq ft";

    private static string Shown(Length length) => $"{PlainNumber.Of(length.Value)} {Length.GetAbbreviation(length.Unit, CultureInfo.InvariantCulture)}";

    private static Answer<BedGround> Refuse(string code, string message, string suggestion) => Answer<BedGround>.Refused(code, message, suggestion);
}
