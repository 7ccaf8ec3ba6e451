using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Reports.Rulers;

/// <summary>
/// A scale laid out as a ruler from 0 (left end) to 1: the guide's limits are its marks, class names stand between them, and a result is
/// a place on it. Between two marks the ruler is even; a stretch is as wide as its name needs, so its measure changes at a mark.
/// </summary>
internal sealed class Ruler
{
    private Ruler(IReadOnlyList<Stretch> stretches, IReadOnlyList<RulerMark> marks, double from, double to, bool isOpenAtStart, bool isOpenAtEnd)
    {
        (Stretches, Marks, From, To) = (stretches, marks, from, to);
        (IsOpenAtStart, IsOpenAtEnd) = (isOpenAtStart, isOpenAtEnd);
    }

    /// <summary>Classes (and gaps of a reference range) from left to right.</summary>
    public IReadOnlyList<Stretch> Stretches { get; }

    /// <summary>The guide's limits.</summary>
    public IReadOnlyList<RulerMark> Marks { get; }

    /// <summary>Where the result lies: its place, or where its open interval starts.</summary>
    public double From { get; }

    /// <summary>Where the open interval of a result ends; the same as <see cref="From"/> for a measured one.</summary>
    public double To { get; }

    /// <summary>True when the ruler goes on to the left without a limit.</summary>
    public bool IsOpenAtStart { get; }

    /// <summary>True when the ruler goes on to the right without a limit.</summary>
    public bool IsOpenAtEnd { get; }

    /// <summary>Lays out the scale of a rating.</summary>
    public static Ruler Of(Rating rating)
    {
        var scale = rating.Scale;
        var value = (double)rating.Amount.Number;
        var pieces = Pieces(scale, rating.Cec);
        var limits = pieces.SelectMany(p => new[] { p.Lower, p.Upper }).OfType<double>().Distinct().Order().ToList();
        var openAtStart = pieces[0].Lower is null;
        var startsAtZero = openAtStart && rating.Analyte is not (Analyte.Ph or Analyte.BufferPh) && limits.All(l => l > 0);
        var span = limits.Count > 1 ? limits[^1] - limits[0] : Math.Max(Math.Abs(limits.FirstOrDefault(value)), 1);
        var low = startsAtZero ? 0 : pieces[0].Lower ?? Math.Min(limits.FirstOrDefault(value), value) - (span / 4);
        var high = pieces[^1].Upper ?? Math.Max(limits.LastOrDefault(value) + (span / 3), value + (span / 12));
        pieces[0] = pieces[0] with { Lower = low };
        pieces[^1] = pieces[^1] with { Upper = high };

        var stretches = Place(pieces, rating.ClassIndex);
        var marks = stretches.Skip(1).Select(s => new RulerMark(s.Start, s.Lower)).ToList();
        if (!openAtStart || startsAtZero)
        {
            marks.Insert(0, new RulerMark(0, low));
        }

        var openAtEnd = scale.Classes[^1].Upper is null;
        if (!openAtEnd)
        {
            marks.Add(new RulerMark(1, high));
        }

        // Where a guide prints whole steps the rating was made on the rounded value, and the place on the ruler says the same.
        var read = scale.PrintedDecimals is { } decimals ? (double)Math.Round(rating.Amount.Number, decimals, MidpointRounding.AwayFromZero) : value;
        var place = At(stretches, read);
        var (from, to) = rating.Amount.Kind switch
        {
            AmountKind.Below => (0, place),
            AmountKind.Above => (place, 1),
            _ => (place, place),
        };
        return new Ruler(stretches, marks, from, to, openAtStart && !startsAtZero, openAtEnd);
    }

    private static double At(IReadOnlyList<Stretch> stretches, double value)
    {
        var stretch = stretches.LastOrDefault(s => value >= s.Lower) ?? stretches[0];
        var share = Math.Clamp((value - stretch.Lower) / (stretch.Upper - stretch.Lower), 0, 1);
        return stretch.Start + (share * (stretch.End - stretch.Start));
    }

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

    private static List<Stretch> Place(List<Piece> pieces, int found)
    {
        var widths = pieces.Select(p => Math.Max(5, ClassName.Lines(p.Name).Max(l => l.Length) + 1.5)).ToList();
        var total = widths.Sum();
        var placed = new List<Stretch>();
        var start = 0.0;
        for (var i = 0; i < pieces.Count; i++)
        {
            var end = i == pieces.Count - 1 ? 1 : start + (widths[i] / total);
            placed.Add(new Stretch(pieces[i].Lower!.Value, pieces[i].Upper!.Value, start, end, pieces[i].Name, pieces[i].Index == found));
            start = end;
        }

        return placed;
    }

    private sealed record Piece(double? Lower, double? Upper, string Name, int Index);
}
