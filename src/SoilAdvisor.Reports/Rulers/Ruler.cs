using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Reports.Rulers;

/// <summary>
/// A scale laid out as one ruler from 0 (left end) to 1, in the guide's unit: its limits are long marks where they truly stand, its
/// classes lie between them, and each result is a place with the stretch in which the soil's true value likely lies.
/// </summary>
internal sealed class Ruler
{
    // Letters of a 12 pixel sans serif, and the narrowest drawing that is meant to be read: a phone.
    private const double LetterWidth = 6.6;
    private const double NarrowestWidth = 270;

    private readonly Ruling ruling;

    private Ruler(Ruling ruling, IReadOnlyList<RulerClass> classes, IReadOnlyList<RulerMark> marks) => (this.ruling, Classes, Marks) = (ruling, classes, marks);

    /// <summary>Classes (and gaps of a reference range) from left to right.</summary>
    public IReadOnlyList<RulerClass> Classes { get; }

    /// <summary>Limits and round numbers from left to right.</summary>
    public IReadOnlyList<RulerMark> Marks { get; }

    /// <summary>Places of the small marks.</summary>
    public IEnumerable<double> SmallMarks => ruling.SmallMarks();

    /// <summary>True when each step multiplies instead of adding.</summary>
    public bool IsByTens => ruling.IsByTens;

    /// <summary>True when every class is wide enough to hold its name; otherwise the classes are numbered.</summary>
    public bool HoldsNames => Classes.All(c => ClassName.Lines(c.Name).Max(l => l.Length) * LetterWidth <= (c.End - c.Start) * NarrowestWidth);

    /// <summary>What the small marks stand for.</summary>
    /// <param name="unit">The scale's unit.</param>
    public string RulingInWords(string unit) => ruling.InWords(unit);

    /// <summary>Lays out the scale of one rating.</summary>
    public static Ruler Of(Rating rating, Whisker? whisker = null) => Of([(rating, whisker)]);

    /// <summary>Lays out one scale for several results, so that they can be compared.</summary>
    /// <param name="ratings">Ratings on one scale with the same limits; at least one.</param>
    public static Ruler Of(IReadOnlyList<(Rating Rating, Whisker? Whisker)> ratings)
    {
        var first = ratings[0].Rating;
        var pieces = Pieces(first.Scale, first.Cec);
        var limits = pieces.SelectMany(p => new[] { p.Lower, p.Upper }).OfType<double>().Distinct().Order().ToList();
        var values = ratings.SelectMany(r => new double?[] { Read(r.Rating), r.Whisker?.Low, r.Whisker?.High }).OfType<double>().ToList();
        var ruling = Ruling.Holding(limits, values, first.Analyte is Analyte.Ph or Analyte.BufferPh);
        var classes = pieces.Select(p => new RulerClass(
            p.Name, p.Index, p.Lower is { } l ? ruling.PlaceOf(l) : 0, p.Upper is { } u ? ruling.PlaceOf(u) : 1, p.Index >= 0 && first.Scale.Classes[p.Index].Standing == Standing.Target)).ToList();
        var marks = limits.Where(l => l > 0 || first.Analyte is Analyte.Ph or Analyte.BufferPh).Select(l => new RulerMark(ruling.PlaceOf(l), l, true)).ToList();
        return new Ruler(ruling, classes, [.. WithRoundNumbers(marks, ruling).OrderBy(m => m.Place)]);
    }

    /// <summary>Where a result lies: one place for a measured one, a stretch for "less than" and "more than".</summary>
    public (double From, double To) PlaceOf(Rating rating)
    {
        var place = ruling.PlaceOf(Read(rating));
        return rating.Amount.Kind switch
        {
            AmountKind.Below => (0, place),
            AmountKind.Above => (place, 1),
            _ => (place, place),
        };
    }

    /// <summary>Where a whisker lies.</summary>
    public (double From, double To) PlaceOf(Whisker whisker) => (ruling.PlaceOf(whisker.Low), ruling.PlaceOf(whisker.High));

    /// <summary>Whether a result lies beyond the left end, as a zero does where the ruler is by tens.</summary>
    public bool IsOffTheEnd(Rating rating) => ruling.IsBelow(Read(rating));

    // Where a guide prints whole steps the rating was made on the rounded value, and the place on the ruler says the same.
    private static double Read(Rating rating) => rating.Scale.PrintedDecimals is { } decimals
        ? (double)Math.Round(rating.Amount.Number, decimals, MidpointRounding.AwayFromZero)
        : (double)rating.Amount.Number;

    // A limit goes before a round number; a round number that would touch another is left out.
    private static IEnumerable<RulerMark> WithRoundNumbers(List<RulerMark> limits, Ruling ruling)
    {
        var marks = new List<RulerMark>(limits);
        foreach (var number in ruling.RoundNumbers())
        {
            var mark = new RulerMark(ruling.PlaceOf(number), number, false);
            if (marks.TrueForAll(m => Math.Abs(m.Place - mark.Place) * NarrowestWidth > (Letters(m) + Letters(mark) + 2) * LetterWidth / 2))
            {
                marks.Add(mark);
            }
        }

        return marks;
    }

    /// <summary>Row of each mark's number, so that two limits that lie close do not print over each other; the order is that of the marks.</summary>
    public IReadOnlyList<int> NumberRows() => Staggered(Marks.Select(m => (m.Place, Letters(m) * LetterWidth)));

    /// <summary>Row of each class's name or number.</summary>
    public IReadOnlyList<int> NameRows() => Staggered(Classes.Select(c => ((c.Start + c.End) / 2, HoldsNames ? 0 : 2 * LetterWidth)));

    private static List<int> Staggered(IEnumerable<(double Place, double Width)> labels)
    {
        var ends = new List<double>();
        var rows = new List<int>();
        foreach (var (place, width) in labels)
        {
            var start = (place * NarrowestWidth) - (width / 2);
            var row = ends.FindIndex(end => start >= end + 3);
            if (row < 0)
            {
                row = ends.Count;
                ends.Add(0);
            }

            ends[row] = start + width;
            rows.Add(row);
        }

        return rows;
    }

    private static int Letters(RulerMark mark) => NumberOf(mark).Length;

    /// <summary>A mark's number as printed.</summary>
    public static string NumberOf(RulerMark mark) => Wording.Figure.Calculator(mark.Number, 5);

    // Whole-number steps ("up to 24", "25 to 45") meet at one mark, the lower limit of the upper class; a true gap gets a stretch of its own.
    private static List<Piece> Pieces(RatingScale scale, decimal? cec)
    {
        var pieces = new List<Piece>();
        for (var i = 0; i < scale.Classes.Count; i++)
        {
            var lower = (double?)scale.LowerOf(i, cec);
            var upper = (double?)scale.UpperOf(i, cec);
            var next = i + 1 < scale.Classes.Count ? (double?)scale.LowerOf(i + 1, cec) : null;
            pieces.Add(new Piece(lower, scale.PrintedDecimals is not null && next is not null ? next : upper, scale.Classes[i].Name, i));
            if (scale.PrintedDecimals is null && next > upper)
            {
                pieces.Add(new Piece(upper, next, "", -1));
            }
        }

        return pieces;
    }

    private sealed record Piece(double? Lower, double? Upper, string Name, int Index);
}
