using System.Globalization;
using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>Nitrogen through the season: what to spread when, what has come by then, what is wanted. The factors fold away.</summary>
internal static class NitrogenSection
{
    public static IEnumerable<Block> Of(BedPlan bed, Measures measures)
    {
        if (bed.NitrogenInTime is not { } nitrogen || nitrogen.Plantings.All(p => p.Need.High.IsZero))
        {
            yield break;
        }

        yield return new Heading(4, "Nitrogen in time");
        foreach (var planting in nitrogen.Plantings)
        {
            if (planting.Dressings.Any(d => d.Parts.Count > 0))
            {
                yield return new SourcedTable([$"{TradeWords.Sentence(planting.Crop.Name).TrimEnd('.')}: when", "Spread", "On this bed", "Nitrogen of it", "The guide wants"], [.. planting.Dressings.SelectMany(d => Rows(d, measures))]);
            }

            yield return new SourcedTable(
                ["Date", "What", "Nitrogen released by then", "Wanted by then"],
                [.. planting.Days.Select(d => new SourcedRow([Day(d), d.What, Range(d.Released, measures), Range(d.Wanted, measures)], [Citation.OurArithmetic, planting.Source]))]);
            yield return new Paragraph([.. Sentences(planting, measures)]);
        }

        if (nitrogen.Factors.Count > 0)
        {
            yield return new Fold("Whose shares of nitrogen are used, and what others print", 5, [new Bullets([.. nitrogen.Factors.Select(Factor)])]);
        }
    }

    private static IEnumerable<SourcedRow> Rows(NitrogenDressing dressing, Measures measures)
    {
        var when = When(dressing);
        if (dressing.Parts.Count == 0)
        {
            yield return new SourcedRow([when, "nothing to spread", "", "", Range(dressing.Wanted, measures)], [dressing.Source]);
        }

        foreach (var (part, index) in dressing.Parts.Select((p, i) => (p, i)))
        {
            yield return new SourcedRow(
                [index == 0 ? when : "", part.Offered.Material.Name, measures.Weight(part.PerBed), Range(part.Nitrogen, measures), index == 0 ? Range(dressing.Wanted, measures) : ""],
                [Citation.OurArithmetic, dressing.Source]);
        }
    }

    private static Cell When(NitrogenDressing dressing) => (dressing.From, dressing.To) switch
    {
        ({ } from, { } to) when from != to => Cell.Of(dressing.When, $"{Measures.Day(from)} to {Measures.Day(to)}"),
        (_, { } to) => Cell.Of(dressing.When, dressing.From is null ? $"planting: {Measures.Day(to)}" : Measures.Day(to)),
        _ => dressing.When,
    };

    private static string Day(NitrogenDay day) => (day.Day, day.AfterPlanting) switch
    {
        ({ } date, _) => Measures.Day(date),
        (_, { } days) => string.Create(CultureInfo.InvariantCulture, $"{days} days after planting"),
        _ => "",
    };

    private static IEnumerable<Sentence> Sentences(PlantingNitrogen planting, Measures measures)
    {
        yield return new Sentence(planting.Uptake.Value, planting.Uptake.Source);
        if (planting.TiedUp is { } tied)
        {
            yield return new Sentence($"Material rich in carbon ties nitrogen up while it rots: {Range(tied, measures)}. That much more has to be given, or the crop goes short.", Citation.OurArithmetic);
        }

        if (planting.NitrateTest is { } test)
        {
            yield return new Sentence(test.Value, test.Source);
        }

        yield return new Sentence(planting.AfterHarvest.Value, planting.AfterHarvest.Source);
    }

    private static Paragraph Factor(NitrogenFactor factor) => new(
        [new Sentence($"{factor.Name}: {factor.Used.Value}.", factor.Used.Source), .. factor.Beside.Select(b => new Sentence($"Beside it: {b.Value}.", b.Source))]);

    private static string Range(RateRange range, Measures measures) => measures.Range(range.Low, range.High);
}
