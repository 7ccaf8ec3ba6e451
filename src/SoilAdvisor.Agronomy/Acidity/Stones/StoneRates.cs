using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>
/// From a requirement to a rate of stone, once and on the requirement's own count. Neutralising value is divided by neutralising value,
/// effective lime by the effective value of the same index, and never one by the other.
/// </summary>
public static class StoneRates
{
    /// <summary>The rate of a stone.</summary>
    /// <param name="requirement">The requirement; not zero.</param>
    /// <param name="offered">A material with a neutralising value above zero.</param>
    /// <param name="tables">Published indexes.</param>
    /// <param name="requirementLine">Line of the requirement in the working; 0 without.</param>
    /// <param name="working">Receives the lines; null for none.</param>
    public static StoneRate For(LimeRequirement requirement, OfferedMaterial offered, LimingTables tables, int requirementLine, WorkingSheet? working)
    {
        var from = Origin.Line(requirementLine);
        switch (requirement.Lime)
        {
            case LimeAmount.NeutralisingValue count:
                // A table in calcium carbonate is met by effective lime where the same publication prints the index.
                var own = tables.Indexes.Where(i => i.Source.SourceId == requirement.Source.SourceId);
                return ByScore(offered, own, count.Rate.Amount, from, working) ?? ByNeutralisingValue(count, offered, tables, from, working);
            case LimeAmount.Effective count:
                var same = tables.Indexes.Where(i => i.Counts == count.Index || (count.Index == EffectiveLimeIndex.NotNamed && i.Id == offered.Analysis.Label?.Score?.Index));
                return ByScore(offered, same, count.Rate.Amount, from, working) ?? ByReagent(count, tables, from, working) ?? Unscored(requirement, count);
            default:
                throw new InvalidOperationException("There is no third way to count lime.");
        }
    }

    private static StoneRate? ByScore(OfferedMaterial offered, IEnumerable<LimeIndex> indexes, MassPerArea pure, Origin from, WorkingSheet? working)
    {
        foreach (var index in indexes)
        {
            var printed = offered.Analysis.Label?.Score is { } score && score.Index == index.Id;
            if (Scored(offered, index, working) is not { } value)
            {
                continue;
            }

            var rate = StoneFormulas.ByEffectiveValue.Of((pure, value.Share), working, from, printed ? Origin.Given("score on the label") : Origin.Line(working?.LastLine ?? 0));
            return new StoneRate(
                rate,
                value,
                $"{index.Title} of this stone: {PlainNumber.Of(value.Score)} {index.Unit}{(printed ? " by its label" : "")}, so that {PlainNumber.Of(value.Share.Percent)} % of it counts as effective lime. Its neutralising value is in that figure and is not taken again.",
                StoneFormulas.ByEffectiveValue.Source,
                value.Noticed);
        }

        return null;
    }

    private static EffectiveValue? Scored(OfferedMaterial offered, LimeIndex index, WorkingSheet? working)
    {
        var label = offered.Analysis.Label;
        if (label?.Score is { } score && score.Index == index.Id)
        {
            return new EffectiveValue(index, (double)score.Value, []);
        }

        return label?.Sieves is { } sieves && StoneQuality.Of(index, ValueOf(offered), sieves, WaterOf(label), ValueFrom(offered), working).TryGet(out var value, out _) ? value : null;
    }

    private static StoneRate ByNeutralisingValue(LimeAmount.NeutralisingValue count, OfferedMaterial offered, LimingTables tables, Origin from, WorkingSheet? working)
    {
        var rate = LimeFormulas.AsStone.Of((count.Rate, ValueOf(offered)), working, from, ValueFrom(offered));
        return new StoneRate(
            rate,
            null,
            $"The requirement counts calcium carbonate equivalent: rate × 100 / {PlainNumber.Of(ValueOf(offered).Percent)} % neutralising value.{(offered.Analysis.Label?.NeutralisingValue is null ? " Use the figure on the label where it differs." : "")}{Grind(offered.Analysis.Label, tables)}",
            LimeFormulas.AsStone.Source,
            []);
    }

    // Pennsylvania's rate by neutralising value takes a fine grind for granted.
    private static string Grind(StoneLabel? label, LimingTables tables)
    {
        var needed = new[] { 20, 60 }
            .Select(mesh => (Mesh: mesh, Least: tables.FigureOf("pennsylvania-fine-sized", Invariant($"passing-{mesh}"))?.Low))
            .Where(n => n.Least is not null)
            .ToList();
        if (needed.Count == 0)
        {
            return "";
        }

        var words = string.Join(" and ", needed.Select(n => Invariant($"{n.Least} % through sieve {n.Mesh}")));
        if (label?.Sieves is not { } sieves || needed.Any(n => sieves.Passing(n.Mesh) is null))
        {
            return $" It takes finely ground stone for granted ({words}).";
        }

        return needed.All(n => sieves.Passing(n.Mesh)!.Value.Percent >= (double)n.Least!)
            ? $" The stone is ground finely enough for that ({words})."
            : $" The stone is coarser than that takes for granted ({words}): it acts more slowly, and the same rate brings less in the first years.";
    }

    private static StoneRate? ByReagent(LimeAmount.Effective count, LimingTables tables, Origin from, WorkingSheet? working)
    {
        if (count.Index != EffectiveLimeIndex.GeorgiaReagent || tables.FigureOf("limestone", "effective-of-reagent") is not { Value: { } share } figure)
        {
            return null;
        }

        var rate = StoneFormulas.ByEffectiveValue.Of((count.Rate.Amount, MassShare.FromPercent((double)share)), working, from, Origin.From(figure.Source));
        return new StoneRate(rate, null, $"Agricultural limestone was {PlainNumber.Of(share)} % as effective as reagent calcium carbonate, which the method counts.", figure.Source, []);
    }

    private static StoneRate Unscored(LimeRequirement requirement, LimeAmount.Effective count) => new(
        count.Rate.Amount,
        null,
        "The method counts effective lime, and the effective value of this stone is not known: this is the rate of stone that scores 100 %. Spread more where the label's score is lower: rate × 100 / score.",
        requirement.Source,
        [new Assumption("stone-score-unknown", $"A stone without a score or sieve analysis is taken as fully effective, because {requirement.Basis} holds neutralising value and grind already and is not divided by a neutralising value again.", requirement.Source)]);

    private static MassShare ValueOf(OfferedMaterial offered) => MassShare.FromFraction(offered.Analysis.Share(Nutrient.CalciumCarbonate));

    private static Origin ValueFrom(OfferedMaterial offered) => Origin.From(offered.Analysis.Sources[Nutrient.CalciumCarbonate][0]);

    private static MassShare? WaterOf(StoneLabel label) => label.Moisture is { } moisture ? MassShare.FromPercent((double)moisture) : null;
}
