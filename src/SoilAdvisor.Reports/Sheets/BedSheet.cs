using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>Everything about one bed: the result in one sentence, then how it came about.</summary>
internal static class BedSheet
{
    // Our own number, never the user's text, so that no id can break a link.
    public static string Anchor(int index) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"bed-{index + 1}");

    public static IEnumerable<Block> Of(BedPlan bed, int index, IReadOnlyList<Assumption> saidForAll, Measures measures)
    {
        yield return new Heading(3, $"Bed {bed.Bed.Id}", Anchor(index));
        yield return new Paragraph([Sentence.Bold(TradeWords.Sentence(bed.Summary), Citation.OurArithmetic)], IsLead: true);
        yield return About(bed, measures);
        var sections = new[]
        {
            RatingSection.Of(bed), Needs(bed, measures), Credits(bed, measures), LimeSection.Of(bed, measures), NitrogenSection.Of(bed, measures), YearsAheadSection.Of(bed, measures), Balance(bed, measures),
            CoverCropSection.Of(bed, measures), Findings(bed), Cautions(bed), Warnings(bed), Refusals(bed), AssumptionsOf(bed, saidForAll), Working(bed),
        };
        foreach (var block in sections.SelectMany(s => s))
        {
            yield return block;
        }
    }

    /// <summary>Everything that was taken as true for a bed, once.</summary>
    internal static IEnumerable<Assumption> Assumptions(BedPlan bed) =>
        bed.Bed.Assumptions
            .Concat(bed.Ratings.SelectMany(r => r.Assumptions))
            .Concat(bed.Need.Assumptions)
            .Concat(bed.Lime?.Requirement.Assumptions ?? [])
            .Concat(bed.Lime?.Chosen?.Offered.Analysis.Assumptions ?? [])
            .Concat(bed.Applications.SelectMany(a => a.Offered.Analysis.Assumptions))
            .Concat(bed.Assumptions)
            .Distinct();

    internal static string CropName(BedPlan bed, int planting, string id) =>
        planting >= 0 && planting < bed.Bed.Plantings.Count && bed.Bed.Plantings[planting].Crop.Id == id
            ? bed.Bed.Plantings[planting].Crop.Name
            : bed.Bed.Plantings.FirstOrDefault(p => p.Crop.Id == id)?.Crop.Name ?? id;

    private static Paragraph About(BedPlan bed, Measures measures)
    {
        var test = bed.Bed.SoilTest;
        var crops = string.Join(", then ", bed.Bed.Plantings.Select(p => p.Planted is { } day ? $"{p.Crop.Name} ({Measures.Day(day)})" : p.Crop.Name));
        var sampled = test.Sampled is { } when ? $", sampled {Measures.Day(when)}" : ", sampling date not given";
        var laboratory = test.Lab is { } lab ? $", {lab}" : "";
        return new Paragraph(
            new Sentence($"Crops: {crops}."),
            new Sentence($"Ground spread: {TradeWords.Of(bed.Bed.Spread)}, {Ground(bed, measures)}.", Citation.OurArithmetic),
            new Sentence($"Soil test {test.Id}{sampled}{laboratory}."),
            new Sentence(bed.Cost is { } cost ? $"Cost of what is priced: {Measures.Cost(cost)}." : "No cost: nothing here has a price.", Citation.OurArithmetic));
    }

    private static string Ground(BedPlan bed, Measures measures)
    {
        var area = measures.Ground(bed.Bed.Area);
        return bed.Bed.AreaShown.EndsWith(area, StringComparison.Ordinal) ? bed.Bed.AreaShown : $"{bed.Bed.AreaShown} ({area})";
    }

    private static IEnumerable<Block> Needs(BedPlan bed, Measures measures)
    {
        yield return new Heading(4, "What the crops need");
        if (bed.Need.Needs.Count == 0)
        {
            yield return new Paragraph(new Sentence(bed.Refused.Count + bed.Need.Refused.Count > 0
                ? "No need could be read from the tables: see below what would settle it."
                : "The tables advise nothing for these crops on this soil."));
            yield break;
        }

        yield return new SourcedTable(
            ["Crop", "Nutrient", "Advised on the ground spread", "Read with", "How to give it"],
            [.. bed.Need.Needs.Select(n => new SourcedRow(
                [CropName(bed, n.PlantingIndex, n.Crop), Named(n), n.Rate.High.IsZero ? "0: none is advised" : Cell.Of(measures.BothRanges(n.Rate.Low, n.Rate.High)), ReadWith(n), HowToGive(n, measures)],
                [n.Source, .. n.Splits.Select(s => s.Source)]))]);
    }

    private static Cell Named(NutrientNeed need) =>
        need.Nutrient.Balanced() is null ? Cell.Of(TradeWords.Of(need.Nutrient), "not part of the material plan: see the findings") : TradeWords.Of(need.Nutrient);

    private static Cell ReadWith(NutrientNeed need)
    {
        var read = need.Class is { } found
            ? $"{need.RateTable}, class {found}" + (need.Standing is { } standing ? $" ({TradeWords.Of(standing)})" : "")
            : $"{need.RateTable}, the same for every class";
        return need.Condition is { } condition ? Cell.Of(read, condition) : read;
    }

    private static Cell HowToGive(NutrientNeed need, Measures measures)
    {
        var parts = need.Splits.OrderBy(s => s.Order).Select(s => s.Rate is { } rate ? $"{measures.Range(rate.Low, rate.High)}: {s.When}" : s.When)
            .Concat(need.Removal is { } removal ? [$"the harvest takes away {measures.Rate(removal)}"] : [])
            .Concat(need.Alternatives.Select(a => $"otherwise: {a}"))
            .ToList();
        return parts.Count == 0 ? "no split printed" : Cell.Of(parts);
    }

    private static IEnumerable<Block> Credits(BedPlan bed, Measures measures)
    {
        if (bed.Need.Credits.Count == 0)
        {
            yield break;
        }

        yield return new Heading(4, "What is already coming (credits)");
        yield return new Paragraph(new Sentence("The plan subtracts the low end."));
        yield return new SourcedTable(
            ["Nutrient", "From", "Low end", "High end", "When"],
            [.. bed.Need.Credits.Select(c => new SourcedRow(
                [TradeWords.Of(c.Nutrient), c.From, measures.Rate(c.Low), measures.Rate(c.High), c.Timing ?? "not printed"], [c.Source]))]);
    }

    private static IEnumerable<Block> Balance(BedPlan bed, Measures measures)
    {
        if (bed.Balances.Count == 0)
        {
            yield break;
        }

        yield return new Heading(4, "Need and supply");
        yield return new SourcedTable(
            ["Nutrient", "Need less credits", "Supplied", "Supplied, high end", "Not above"],
            [.. bed.Balances.Select(b => new SourcedRow(
                [
                    b.Nutrient.Words(),
                    b.Floor is { } floor ? measures.Rate(floor) : "no need",
                    measures.Rate(b.Supplied),
                    measures.Rate(b.SuppliedHigh),
                    b.Ceiling is { } ceiling ? Cell.Of([measures.Rate(ceiling), .. b.CeilingReason is { } reason ? [reason] : Array.Empty<string>()]) : "no limit set",
                ],
                [Citation.OurArithmetic, .. bed.Need.Needs.Where(n => n.Nutrient.Balanced() == b.Nutrient).Select(n => n.Source)]))]);
        if (bed.Shortfalls.Count > 0)
        {
            yield return new Bullets([.. bed.Shortfalls.Select(s => new Paragraph(
                Sentence.Bold(s.IsCeiling
                    ? $"{Capital(s.Nutrient.Words())} goes {measures.Rate(s.By)} over its limit{ForCrop(bed, s)}."
                    : $"{Capital(s.Nutrient.Words())} is {measures.Rate(s.By)} short{ForCrop(bed, s)}.", Citation.OurArithmetic),
                new Sentence("What would meet it: " + TradeWords.Sentence(s.WhatWouldMeetIt), Citation.OurArithmetic)))]);
        }
    }

    private static string ForCrop(BedPlan bed, Shortfall shortfall) =>
        shortfall.PlantingIndex is { } index && index >= 0 && index < bed.Bed.Plantings.Count ? $" for {bed.Bed.Plantings[index].Crop.Name}" : " over the season";

    private static IEnumerable<Block> Findings(BedPlan bed)
    {
        if (bed.Findings.Count == 0)
        {
            yield break;
        }

        yield return new Heading(4, "Organic findings");
        yield return FindingTable.Of(bed.Findings);
    }

    private static IEnumerable<Block> Cautions(BedPlan bed) =>
        Listed("Take care", bed.Cautions.Select(c => new Paragraph(new Sentence(TradeWords.Sentence(c.Text), c.Source))));

    private static IEnumerable<Block> Warnings(BedPlan bed) =>
        Listed("Warnings", bed.Warnings.Select(w => new Paragraph(new Sentence(TradeWords.Sentence(w), Citation.OurJudgement))));

    private static IEnumerable<Block> Refusals(BedPlan bed) =>
        Listed("No answer, and what would settle it", bed.Refused.Concat(bed.Need.Refused).Select(r => r.Refusal).Distinct().Select(r => new Paragraph(
            new Sentence(TradeWords.Sentence(r.Message), Citation.OurJudgement),
            Sentence.Bold("What to do:"),
            new Sentence(TradeWords.Sentence(r.Suggestion), Citation.OurJudgement))));

    private static IEnumerable<Block> AssumptionsOf(BedPlan bed, IReadOnlyList<Assumption> saidForAll) =>
        Listed("Taken as true", FarmPaper.Said(Assumptions(bed).Except(saidForAll)).Entries);

    private static IEnumerable<Block> Working(BedPlan bed)
    {
        if (bed.Working.Count == 0)
        {
            yield break;
        }

        yield return new Heading(4, "Working");
        foreach (var section in bed.Working.GroupBy(l => l.Section))
        {
            yield return new Fold(section.Key.Length == 0 ? "Steps" : section.Key, 5, [.. section.Select(l => new WorkingBlock(l))]);
        }
    }

    private static IEnumerable<Block> Listed(string heading, IEnumerable<Paragraph> entries)
    {
        var list = entries.ToList();
        return list.Count == 0 ? [] : [new Heading(4, heading), new Bullets(list)];
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
