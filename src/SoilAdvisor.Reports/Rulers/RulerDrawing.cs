using System.Globalization;
using System.Text;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Rulers;

/// <summary>
/// Draws rulers as inline SVG in one ink. Places are in percent and letters in fixed sizes, so that a ruler stays readable from a phone to
/// a printed page; each says the same in words to a reader who does not see it.
/// </summary>
internal static class RulerDrawing
{
    // Left and right margin in percent, so that a number on the first or last mark is not cut off.
    private const double Margin = 5;
    private const int ResultBaseline = 12;
    private const int ResultLine = 24;
    private const int Edge = 38;
    private const int NumberBaseline = 64;
    private const int TextLine = 13;

    /// <summary>A ruler with its classes and one result.</summary>
    public static string Whole(Rating rating, Whisker? whisker, string spoken, Func<string, string> encode)
    {
        var ruler = Ruler.Of(rating, whisker);
        var names = NumberBaseline + (TextLine * ruler.NumberRows().Max()) + TextLine + 4;
        var (body, bottom) = Names(ruler, rating.ClassIndex, names, encode);
        var svg = Open("ruler", bottom + 6, spoken, encode);
        Scale(svg, ruler, Edge);
        svg.Append(body);
        var place = Result(svg, ruler, rating, whisker, ResultLine, Edge);
        Text(svg, place, ResultBaseline, encode(RulerWords.Result(rating)), "result", Anchor(place));
        return svg.Append("</svg>").ToString();
    }

    /// <summary>The head of several rulers that share one scale: classes and numbers, no result.</summary>
    public static string Head(Ruler ruler, string spoken, Func<string, string> encode)
    {
        const int HeadEdge = 10;
        var numbers = HeadEdge + (NumberBaseline - Edge);
        var names = numbers + (TextLine * ruler.NumberRows().Max()) + TextLine + 4;
        var (body, bottom) = Names(ruler, -1, names, encode);
        var svg = Open("ruler", bottom + 6, spoken, encode);
        Scale(svg, ruler, HeadEdge);
        return svg.Append(body).Append("</svg>").ToString();
    }

    /// <summary>One of several results on a shared scale: the limits run through, so that the eye follows them from row to row.</summary>
    public static string Row(Ruler ruler, Rating rating, Whisker? whisker, string spoken, Func<string, string> encode)
    {
        const int Height = 30;
        const int Middle = 15;
        var svg = Open("ruler row", Height, spoken, encode);
        foreach (var limit in ruler.Marks.Where(m => m.IsLimit))
        {
            Line(svg, limit.Place, limit.Place, 0, Height, "mark");
        }

        Line(svg, 0, 1, Middle, Middle, "hair");
        Result(svg, ruler, rating, whisker, Middle, Middle);
        return svg.Append("</svg>").ToString();
    }

    private static StringBuilder Open(string kind, int height, string spoken, Func<string, string> encode) =>
        new StringBuilder().Append(CultureInfo.InvariantCulture, $"<svg class=\"{kind}\" role=\"img\" width=\"100%\" height=\"{height}\" aria-label=\"{encode(spoken)}\">");

    private static void Scale(StringBuilder svg, Ruler ruler, int edge)
    {
        Line(svg, 0, 1, edge, edge, "edge");
        svg.Append("<g class=\"small\">");
        foreach (var small in ruler.SmallMarks)
        {
            Line(svg, small, small, edge - 4, edge);
        }

        svg.Append("</g>");

        // The second line under the edge says where the guide wants a soil to be, without a colour or a fill.
        foreach (var target in ruler.Classes.Where(c => c.IsTarget))
        {
            Line(svg, target.Start, target.End, edge + 4, edge + 4, "target");
        }

        foreach (var (mark, row) in ruler.Marks.Zip(ruler.NumberRows()))
        {
            Line(svg, mark.Place, mark.Place, mark.IsLimit ? edge - 7 : edge - 4, edge + (mark.IsLimit ? 13 : 4), mark.IsLimit ? "mark" : "small");
            Text(svg, mark.Place, edge + (NumberBaseline - Edge) + (TextLine * row), Ruler.NumberOf(mark), mark.IsLimit ? "limit" : "round", "middle");
        }
    }

    // Returns the place where the result's number is written.
    private static double Result(StringBuilder svg, Ruler ruler, Rating rating, Whisker? whisker, int y, int edge)
    {
        var (from, to) = ruler.PlaceOf(rating);
        if (rating.Amount.Kind != AmountKind.Measured)
        {
            // "Less than 5" may be anywhere up to 5: a dashed stretch with an open end at the limit, never a point.
            Line(svg, from, to, y, y, "open");
            var limit = rating.Amount.Kind == AmountKind.Below ? to : from;
            Circle(svg, limit, y, 4, "open-dot");
            return limit;
        }

        if (whisker is { } spread)
        {
            var (low, high) = ruler.PlaceOf(spread);
            Line(svg, low, high, y, y, "whisker");
            Line(svg, low, low, y - 5, y + 5, "whisker");
            Line(svg, high, high, y - 5, y + 5, "whisker");
        }

        if (y != edge)
        {
            Line(svg, from, from, y, edge, "drop");
        }

        if (ruler.IsOffTheEnd(rating))
        {
            Circle(svg, from, y, 4, "open-dot");
        }
        else
        {
            Circle(svg, from, y, 5, "dot");
        }

        return from;
    }

    private static (string Body, int Bottom) Names(Ruler ruler, int found, int top, Func<string, string> encode)
    {
        var svg = new StringBuilder();
        var bottom = top;
        foreach (var (stretch, row) in ruler.Classes.Zip(ruler.NameRows()))
        {
            var lines = ruler.HoldsNames ? ClassName.Lines(stretch.Name) : [stretch.Index < 0 ? "" : (stretch.Index + 1).ToString(CultureInfo.InvariantCulture)];
            var y = top + (TextLine * row);
            foreach (var line in lines.Where(l => l.Length > 0))
            {
                Text(svg, (stretch.Start + stretch.End) / 2, y, encode(line), stretch.Index == found && found >= 0 ? "name found" : "name", "middle");
                bottom = Math.Max(bottom, y);
                y += TextLine;
            }
        }

        return (svg.ToString(), bottom);
    }

    private static string Anchor(double place) => place < 0.15 ? "start" : place > 0.85 ? "end" : "middle";

    private static void Line(StringBuilder svg, double from, double to, int y1, int y2, string? kind = null) =>
        svg.Append(CultureInfo.InvariantCulture, $"<line x1=\"{Percent(from)}\" x2=\"{Percent(to)}\" y1=\"{y1}\" y2=\"{y2}\"{(kind is null ? "" : $" class=\"{kind}\"")}/>");

    private static void Circle(StringBuilder svg, double place, int y, int radius, string kind) =>
        svg.Append(CultureInfo.InvariantCulture, $"<circle cx=\"{Percent(place)}\" cy=\"{y}\" r=\"{radius}\" class=\"{kind}\"/>");

    private static void Text(StringBuilder svg, double place, int y, string encoded, string kind, string anchor) =>
        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{Percent(place)}\" y=\"{y}\" class=\"{kind}\" text-anchor=\"{anchor}\">{encoded}</text>");

    private static string Percent(double place) => (Margin + (place * (100 - (2 * Margin)))).ToString("0.##", CultureInfo.InvariantCulture) + "%";
}
