using System.Globalization;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>Cover crops for a bed's gap: the best in full, the others and the unfit where a reader asks.</summary>
internal static class CoverCropSection
{
    private const int InFull = 3;

    public static IEnumerable<Block> Of(BedPlan bed, Measures measures)
    {
        if (bed.CoverCrops is not { } selection)
        {
            yield break;
        }

        yield return new Heading(4, "Cover crops for the gap");
        yield return new Paragraph(
            new Sentence(string.Create(CultureInfo.InvariantCulture, $"The bed is free from {Measures.Day(selection.Gap.From)} to {Measures.Day(selection.Gap.To)}: {selection.Gap.Days} days."), Citation.OurArithmetic),
            new Sentence("A cover crop moves phosphorus within the soil and hands it on; it adds none. Growing one changes no amount in this plan.", Citation.OurJudgement));
        if (selection.Choices.Count == 0)
        {
            yield return new Paragraph(new Sentence("None in the tables fits this gap."));
        }

        foreach (var choice in selection.Choices.Take(InFull))
        {
            yield return new Heading(5, Name(choice.CoverCrop));
            yield return Facts(choice, measures);
            yield return new Bullets([.. Reasons(choice)]);
        }

        if (selection.Choices.Count > InFull)
        {
            yield return new Fold("Others that fit", 5, [Others(selection.Choices.Skip(InFull), measures)]);
        }

        if (selection.Excluded.Count > 0)
        {
            yield return new Fold("What does not fit, and why", 5,
                [new Bullets([.. selection.Excluded.Select(e => new Paragraph([Sentence.Bold(e.CoverCrop + ":"), .. e.Reasons.Select(r => new Sentence(TradeWords.Sentence(r.Text), r.Source))]))])]);
        }
    }

    // What counts stands line by line; what is only good to know stands together.
    private static IEnumerable<Paragraph> Reasons(CoverCropChoice choice)
    {
        foreach (var reason in choice.Reasons.Where(r => r.Points != 0))
        {
            yield return new Paragraph(new Sentence($"{reason.Text.TrimEnd('.')} ({Signed(reason.Points)}).", reason.Source));
        }

        var others = choice.Reasons.Where(r => r.Points == 0).Select(r => new Sentence(TradeWords.Sentence(r.Text), r.Source)).ToList();
        if (others.Count > 0)
        {
            yield return new Paragraph([new Sentence("Without points:"), .. others]);
        }
    }

    private static Paragraph Facts(CoverCropChoice choice, Measures measures)
    {
        var sentences = new List<Sentence>
        {
            new(string.Create(CultureInfo.InvariantCulture, $"{Points(choice.Score)}, the sum of the reasons below. Sow from {Measures.Day(choice.Sow)}, end it by {Measures.Day(choice.KillBy)}."), Citation.OurArithmetic),
            new($"It needs {Printed(choice.DaysNeeded)}.", choice.DaysNeeded.Source),
        };
        if (choice.SeedRate is { } rate)
        {
            sentences.Add(new Sentence(choice.SeedPerBed is { } seed ? $"Seed for the bed: {measures.Weight(seed)} ({Printed(rate)})." : $"Seed: {Printed(rate)}.", rate.Source));
        }

        foreach (var said in new[] { choice.DryMatter, choice.Nitrogen, choice.Phosphorus }.OfType<Cited<string>>())
        {
            sentences.Add(new Sentence(TradeWords.Sentence(said.Value), said.Source));
        }

        return new Paragraph(sentences);
    }

    private static SourcedTable Others(IEnumerable<CoverCropChoice> choices, Measures measures) => new(
        ["Cover crop", "Points", "Sow from", "End by", "Seed for the bed"],
        [.. choices.Select(c => new SourcedRow(
            [Name(c.CoverCrop), Points(c.Score), Measures.Day(c.Sow), Measures.Day(c.KillBy), c.SeedPerBed is { } seed ? measures.Weight(seed) : "no seed rate held"],
            [c.DaysNeeded.Source, .. c.SeedRate is { } rate ? new[] { rate.Source } : [], .. c.Reasons.Select(r => r.Source)]))]);

    private static string Name(CoverCrop crop) => crop.LatinName is { } latin ? $"{crop.Name} ({latin})" : crop.Name;

    private static string Points(double points) => string.Create(CultureInfo.InvariantCulture, $"{points:0.##} {(Math.Abs(points) == 1 ? "point" : "points")}");

    private static string Signed(double points) => points.ToString("+0.##;-0.##", CultureInfo.InvariantCulture);

    private static string Printed(CoverCropValue value)
    {
        var number = (value.Value, value.Low, value.High) switch
        {
            ({ } v, _, _) => Figure.Of(v),
            (null, { } l, { } h) => $"{Figure.Of(l)} to {Figure.Of(h)}",
            (null, { } l, null) => $"at least {Figure.Of(l)}",
            (null, null, { } h) => $"up to {Figure.Of(h)}",
            _ => value.Text ?? "not printed",
        };
        return value.Unit.Length == 0 ? number : $"{number} {value.Unit}";
    }
}
