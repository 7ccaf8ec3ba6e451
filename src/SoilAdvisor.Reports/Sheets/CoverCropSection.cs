using System.Globalization;
using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
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
        yield return new Paragraph(Opening(selection));
        if (selection.Termination is { } guidance)
        {
            yield return new Paragraph(new Sentence(TradeWords.Sentence(guidance.Text), guidance.Source));
        }

        if (selection.Choices.Count == 0)
        {
            yield return new Paragraph(new Sentence("None in the tables fits this gap."));
        }

        foreach (var choice in selection.Choices.Take(InFull))
        {
            yield return new Heading(5, Name(choice.CoverCrop));
            yield return Facts(choice, measures);
            yield return new Bullets([.. Reasons(choice)]);
            if (Stages(choice, measures) is { } stages)
            {
                yield return stages;
            }

            var notes = Notes(choice, measures).ToList();
            if (notes.Count > 0)
            {
                yield return new Fold($"More on {choice.CoverCrop.Name}", 6, [new Bullets(notes)]);
            }
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

    private static IReadOnlyList<Sentence> Opening(CoverCropSelection selection)
    {
        var sentences = new List<Sentence>
        {
            new(string.Create(CultureInfo.InvariantCulture, $"The bed is free from {Measures.Day(selection.Gap.From)} to {Measures.Day(selection.Gap.To)}: {selection.Gap.Days} days."), Citation.OurArithmetic),
        };
        if (selection.Warmth is { } warmth)
        {
            var others = string.Join(", ", warmth.ByMethod.Select(m => $"{Figure.Short(m.Sum.FahrenheitDays)} by {DegreeDayBasis.MethodWords(m.Method)}"));
            sentences.Add(new Sentence($"It gives {Figure.Short(warmth.Sum.FahrenheitDays)} degree-days (°F; {warmth.Basis.Words}). Methods differ: {others}.", DegreeDayFormulas.DailyMean.Source));
        }

        sentences.Add(new Sentence("A cover crop moves phosphorus within the soil and hands it on; it adds none. Growing one changes no amount in this plan.", Citation.OurJudgement));
        sentences.Add(new Sentence($"Ranked for {string.Join(", ", selection.Aims.Select(a => a.Replace('-', ' ')))}. Points are a grade times a weight; the weights are ours and can be changed.", Citation.OurJudgement));
        return sentences;
    }

    // What counts stands line by line; what is only good to know stands folded.
    private static IEnumerable<Paragraph> Reasons(CoverCropChoice choice) => choice.Reasons.Where(r => r.Points != 0).Select(r => new Paragraph(new Sentence(
        r.Weight == 1 ? $"{r.Text.TrimEnd('.')} ({Signed(r.Points)})." : $"{r.Text.TrimEnd('.')} ({Signed(r.Grade)} × {Plain(r.Weight)} = {Signed(r.Points)}).", r.Source)));

    private static IEnumerable<Paragraph> Notes(CoverCropChoice choice, Measures measures)
    {
        foreach (var wait in choice.Window.Wait.Reasons)
        {
            yield return new Paragraph(new Sentence(TradeWords.Sentence($"Wait: {wait.Text}"), wait.Source));
        }

        if (choice.Numbers.NitrogenFixed is { } nitrogen)
        {
            yield return new Paragraph(new Sentence($"Nitrogen from the air: {measures.Range(nitrogen.Low, nitrogen.High)} ({nitrogen.Basis}).", nitrogen.Source));
        }

        if (choice.Numbers.Potash is { } potash)
        {
            yield return new Paragraph(new Sentence($"Takes up and returns {measures.Range(potash.Low, potash.High)} of K2O, by {potash.Basis}: moved, not added.", potash.Source));
        }

        foreach (var trial in choice.Numbers.Trials)
        {
            yield return new Paragraph(new Sentence(TradeWords.Sentence(trial.Text), trial.Source));
        }

        foreach (var note in choice.Reasons.Where(r => r.Points == 0))
        {
            yield return new Paragraph(new Sentence(TradeWords.Sentence(note.Text), note.Source));
        }
    }

    private static SourcedTable? Stages(CoverCropChoice choice, Measures measures) => choice.Numbers.Stages.Count == 0
        ? null
        : new SourcedTable(
            ["If grown and killed", "Carbon to nitrogen", "Nitrogen for the next crop"],
            [.. choice.Numbers.Stages.Select(s => new SourcedRow(
                [StageWords(s.Stage), Ratio(s), $"{measures.Range(s.Low.Available, s.High.Available)}{(s.High.Available < default(MassPerArea) ? ": ties nitrogen up" : "")}"],
                [s.Source]))]);

    private static string StageWords(string stage) => stage switch
    {
        "before-flowering" => "before flowering",
        "flowering" => "at flowering",
        "mature" => "when ripe",
        _ => "at the stage printed",
    };

    private static string Ratio(StageNitrogen stage)
    {
        var (low, high) = (stage.High.CarbonToNitrogen.Value, stage.Low.CarbonToNitrogen.Value);
        return Figure.Short(Math.Min(low, high)) == Figure.Short(Math.Max(low, high)) ? Figure.Short(low) : $"{Figure.Short(Math.Min(low, high))} to {Figure.Short(Math.Max(low, high))}";
    }

    private static string Plain(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);

    private static Paragraph Facts(CoverCropChoice choice, Measures measures)
    {
        var sentences = new List<Sentence>
        {
            new(string.Create(CultureInfo.InvariantCulture, $"{Points(choice.Score)}, the sum of the reasons below. Sow from {Measures.Day(choice.Window.Sow)}, end it by {Measures.Day(choice.Window.KillBy)}, plant from {Measures.Day(choice.Window.PlantFrom)} ({choice.Window.Wait.Days} days of wait)."), Citation.OurArithmetic),
            new(choice.Window.DaysNeeded.Unit.Length == 0 ? $"It is {Printed(choice.Window.DaysNeeded)}." : $"It needs {Printed(choice.Window.DaysNeeded)}.", choice.Window.DaysNeeded.Source),
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
            [Name(c.CoverCrop), Points(c.Score), Measures.Day(c.Window.Sow), Measures.Day(c.Window.KillBy), c.SeedPerBed is { } seed ? measures.Weight(seed) : "no seed rate held"],
            [c.Window.DaysNeeded.Source, .. c.SeedRate is { } rate ? new[] { rate.Source } : [], .. c.Reasons.Select(r => r.Source)]))]);

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
