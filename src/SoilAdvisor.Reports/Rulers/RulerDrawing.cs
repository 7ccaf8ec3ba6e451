using System.Globalization;
using System.Text;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Rulers;

/// <summary>
/// Draws a ruler as inline SVG in one ink. Places are in percent and letters in fixed sizes, so that it stays readable from a phone to a
/// printed page; it says the same in words to a reader who does not see it.
/// </summary>
internal static class RulerDrawing
{
    // Left and right margin in percent, so that a number on the first or last mark is not cut off.
    private const double Margin = 5;
    private const int LimitDigits = 5;
    private const int Edge = 34;
    private const int LimitBaseline = 62;
    private const int NameBaseline = 80;
    private const int NameLine = 13;

    public static string Svg(Rating rating, string spoken, Func<string, string> encode)
    {
        var ruler = Ruler.Of(rating);
        var lines = ruler.Stretches.Max(s => ClassName.Lines(s.Name).Count);
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg class=\"ruler\" role=\"img\" width=\"100%\" height=\"{NameBaseline + (NameLine * (lines - 1)) + 6}\" aria-label=\"{encode(spoken)}\">");
        Line(svg, 0, 1, Edge, Edge, "edge");
        if (ruler.IsOpenAtEnd)
        {
            Shape(svg, 1, "M0 -4 L8 0 L0 4", "open-end");
        }

        if (ruler.IsOpenAtStart)
        {
            Shape(svg, 0, "M0 -4 L-8 0 L0 4", "open-end");
        }

        svg.Append("<g class=\"small\">");
        foreach (var small in ruler.Stretches.SelectMany(s => s.SmallMarks))
        {
            Line(svg, small, small, Edge, Edge + 5);
        }

        svg.Append("</g>");
        foreach (var stretch in ruler.Stretches)
        {
            Name(svg, stretch, encode);
        }

        foreach (var mark in ruler.Marks)
        {
            Line(svg, mark.Place, mark.Place, Edge, Edge + 13, "mark");
            Text(svg, mark.Place, LimitBaseline, Figure.Calculator(mark.Limit, LimitDigits), "limit", "middle");
        }

        Result(svg, ruler, rating, encode);
        return svg.Append("</svg>").ToString();
    }

    private static void Result(StringBuilder svg, Ruler ruler, Rating rating, Func<string, string> encode)
    {
        var label = encode($"{rating.Amount} {TradeWords.Of(rating.Scale.Unit)}".TrimEnd());
        if (rating.Amount.Kind == AmountKind.Measured)
        {
            Shape(svg, ruler.From, "M0 -2 L-6 -13 L6 -13 Z", "pointer");
            Text(svg, ruler.From, 15, label, "result", Anchor(ruler.From));
            return;
        }

        // "Less than 5" may be anywhere up to 5: a dashed stretch with an open end at the limit, never a point.
        Line(svg, ruler.From, ruler.To, Edge - 8, Edge - 8, "open");
        var limit = rating.Amount.Kind == AmountKind.Below ? ruler.To : ruler.From;
        svg.Append(CultureInfo.InvariantCulture, $"<circle cx=\"{Percent(limit)}\" cy=\"{Edge - 8}\" r=\"4\" class=\"open-dot\"/>");
        Text(svg, limit, 15, label, "result", Anchor(limit));
    }

    private static void Name(StringBuilder svg, Stretch stretch, Func<string, string> encode)
    {
        var y = NameBaseline;
        foreach (var line in ClassName.Lines(stretch.Name))
        {
            Text(svg, (stretch.Start + stretch.End) / 2, y, encode(line), stretch.IsFound ? "name found" : "name", "middle");
            y += NameLine;
        }
    }

    private static string Anchor(double place) => place < 0.15 ? "start" : place > 0.85 ? "end" : "middle";

    private static void Line(StringBuilder svg, double from, double to, int y1, int y2, string? kind = null) =>
        svg.Append(CultureInfo.InvariantCulture, $"<line x1=\"{Percent(from)}\" x2=\"{Percent(to)}\" y1=\"{y1}\" y2=\"{y2}\"{(kind is null ? "" : $" class=\"{kind}\"")}/>");

    private static void Text(StringBuilder svg, double place, int y, string encoded, string kind, string anchor) =>
        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{Percent(place)}\" y=\"{y}\" class=\"{kind}\" text-anchor=\"{anchor}\">{encoded}</text>");

    // A nested drawing carries the fixed-size shape to a place given in percent.
    private static void Shape(StringBuilder svg, double place, string path, string kind) =>
        svg.Append(CultureInfo.InvariantCulture, $"<svg x=\"{Percent(place)}\" y=\"{Edge}\" overflow=\"visible\"><path d=\"{path}\" class=\"{kind}\"/></svg>");

    private static string Percent(double place) => (Margin + (place * (100 - (2 * Margin)))).ToString("0.##", CultureInfo.InvariantCulture) + "%";
}
