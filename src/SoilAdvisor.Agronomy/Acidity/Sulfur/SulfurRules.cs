using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity.Sulfur;

/// <summary>The published sulfur rules side by side. They disagree; none is averaged with another.</summary>
internal sealed class SulfurRules(LimingTables tables, SoilTest test, decimal ph, decimal goal, Origin phFrom, WorkingSheet? working)
{
    private readonly List<Assumption> assumptions = [];

    public IReadOnlyList<Assumption> Assumptions => assumptions;

    public IReadOnlyList<SulfurRule> All() => [.. new[] { Michigan(), Tennessee(), Extension(), RoyalHorticulturalSociety() }.OfType<SulfurRule>()];

    private SulfurRule? Michigan()
    {
        const string id = "michigan-table";
        const string title = "Michigan State University table, restated";
        var soil = Column();
        var rows = tables.SulfurCells.Where(c => c.Soil == soil).OrderBy(c => c.StartPh).ToList();
        if (rows.Count == 0)
        {
            return null;
        }

        var source = rows[0].Source;
        var end = rows[0].GoalPh;
        if (ph > rows[^1].StartPh || goal < end)
        {
            return new SulfurRule(id, title, null, null, null, null, Invariant($"The table is printed from pH {rows[0].StartPh} to {rows[^1].StartPh}, down to pH {end}."), source);
        }

        // Between printed rows the step that needs less sulfur is taken: too little can be repeated after a test, too much cannot be taken back.
        var start = rows.LastOrDefault(r => r.StartPh <= ph);
        var stop = goal == end ? null : rows.FirstOrDefault(r => r.StartPh >= goal);
        if (start is null || (stop is null && goal != end) || stop?.StartPh >= start.StartPh)
        {
            return new SulfurRule(id, title, null, null, null, null, Invariant($"The table has no two rows between pH {ph} and {goal}: its steps are half a unit, and nothing is read between them."), source);
        }

        var to = stop?.StartPh ?? end;
        var rate = SulfurFormulas.ByDifference.Of(
            (Rate<ElementalSulfur>.FromPoundsPerAcre((double)start.Rate), Rate<ElementalSulfur>.FromPoundsPerAcre((double)(stop?.Rate ?? 0))),
            working,
            Origin.From(start.Source),
            Origin.From(stop?.Source ?? start.Source));
        var read = stop is null
            ? Invariant($"Row {start.StartPh}, {Name(soil)}: {start.Rate} lb/acre to pH {end}.")
            : Invariant($"Row {start.StartPh} less row {stop.StartPh}, {Name(soil)}: {start.Rate} − {stop.Rate} lb/acre. The table goes to pH {end}; the difference is ours.");
        return new SulfurRule(id, title, rate, rate, start.StartPh, to, read, source);
    }

    private SulfurRule? Tennessee()
    {
        const string id = "tennessee";
        const string title = "University of Tennessee, home-garden blueberries";
        if (Figure(id, "rate-per-tenth") is not { } perTenth || Figure(id, "goal-ph") is not { } end || Figure(id, "texture-thirds") is not { } thirds)
        {
            return null;
        }

        if (ph <= end.Value)
        {
            return new SulfurRule(id, title, null, null, null, null, Invariant($"The rule counts what is above pH {end.Value} and nothing below."), perTenth.Source);
        }

        if (goal > end.Value)
        {
            return new SulfurRule(id, title, null, null, null, null, Invariant($"The rule goes down to pH {end.Value}, below the target, and prints nothing for {goal}."), perTenth.Source);
        }

        var (texture, words) = Texture((double)thirds.Value / 3);
        var rate = SulfurFormulas.Tennessee.Of(
            (new Coefficient((double)perTenth.Value), Soil(ph), Soil(end.Value), new Coefficient(texture)),
            working,
            Origin.From(perTenth.Source),
            phFrom,
            Origin.From(end.Source),
            Origin.From(thirds.Source));
        var depth = Figure(id, "depth") is { } top ? Invariant($", for the top {top.Value} {top.Unit}") : "";
        return new SulfurRule(id, title, rate, rate, ph, end.Value, Invariant($"{perTenth.Value} lb per 1000 sq ft for each tenth of pH above {end.Value} on silt loam{words}{depth}."), perTenth.Source);
    }

    private SulfurRule? Extension()
    {
        const string id = "extension";
        const string title = "United States extension network, blueberries";
        if (Figure(id, "rate-per-unit-sand") is not { } onSand || Figure(id, "rate-per-unit-heavier") is not { } heavier || Figure(id, "organic-matter-above") is not { } limit)
        {
            return null;
        }

        var rich = test.Of(Analyte.OrganicMatter) is { Amount: { Kind: AmountKind.Measured } amount } && amount.Number > limit.Value;
        var sandy = Column() == SulfurSoil.Sand && !rich;
        var figure = sandy ? onSand : heavier;
        var rate = SulfurFormulas.Extension.Of((new Coefficient((double)figure.Value), Soil(ph), Soil(goal)), working, Origin.From(figure.Source), phFrom, Origin.Given("target pH"));
        var difficult = Figure(id, "difficult-above") is { } above && ph > above.Value ? Invariant($" Above pH {above.Value} at the start it calls blueberries difficult.") : "";
        var planted = Figure(id, "yearly-on-planted-beds") is { } yearly ? Invariant($" On planted beds at most {yearly.Value} lb per 100 sq ft a year, on the surface.") : "";
        return new SulfurRule(
            id,
            title,
            rate,
            rate,
            ph,
            goal,
            Invariant($"{figure.Value} lb per 100 sq ft for each unit of pH on {(sandy ? "sand" : rich ? Invariant($"soil with more than {limit.Value} % organic matter") : "heavier soil")}.{difficult}{planted}"),
            figure.Source);
    }

    private SulfurRule? RoyalHorticulturalSociety()
    {
        const string id = "royal-horticultural-society";
        const string title = "Royal Horticultural Society, United Kingdom";
        if (Figure(id, "rate-sand") is not { } onSand || Figure(id, "rate-clay") is not { } onClay || Figure(id, "start-from") is not { } from || Figure(id, "start-to") is not { } to
            || Figure(id, "goal-from") is not { } end || Figure(id, "goal-to") is not { } highEnd)
        {
            return null;
        }

        var printed = Invariant($"from pH {from.Value}-{to.Value} to {end.Value}-{highEnd.Value}");
        if (ph < from.Value || ph > to.Value || goal < end.Value || goal > highEnd.Value)
        {
            return new SulfurRule(id, title, null, null, null, null, Invariant($"The rule is printed {printed} only."), onSand.Source);
        }

        return new SulfurRule(
            id,
            title,
            OnSquareMeter(onSand.Value),
            OnSquareMeter(onClay.Value),
            ph,
            goal,
            Invariant($"{onSand.Value} g/m2 on sand to {onClay.Value} g/m2 on clay {printed}."),
            onSand.Source);
    }

    private static Rate<ElementalSulfur> OnSquareMeter(decimal grams) => new(MassPerArea.FromKilogramsPerHectare((double)grams * 10));

    // Between the columns the lighter one is read: it gives less sulfur.
    private SulfurSoil Column()
    {
        switch (test.SoilGroup)
        {
            case SoilGroup.Clay:
                return SulfurSoil.Clay;
            case SoilGroup.Loam or SoilGroup.SiltLoam or SoilGroup.ClayLoam or SoilGroup.Organic:
                return SulfurSoil.Loam;
            case null:
                Assume("sulfur-texture-unknown", "The texture is not said, so the rates of sand are read: they are the smallest. Say the texture for a better figure.");
                return SulfurSoil.Sand;
            default:
                return SulfurSoil.Sand;
        }
    }

    private (double Factor, string Words) Texture(double third) => Column() switch
    {
        SulfurSoil.Clay => (1 + third, ", a third more on clay"),
        SulfurSoil.Sand => (1 - third, ", a third less on sand"),
        _ => (1, ""),
    };

    private void Assume(string code, string text)
    {
        if (assumptions.TrueForAll(a => a.Code != code))
        {
            assumptions.Add(new Assumption(code, text, Citation.OurJudgement));
        }
    }

    private SulfurFigure? Figure(string rule, string symbol) => tables.SulfurFigures.FirstOrDefault(f => f.Rule == rule && f.Symbol == symbol);

    private static SoilPh Soil(decimal value) => new((double)value);

    private static string Name(SulfurSoil soil) => soil switch
    {
        SulfurSoil.Clay => "clay",
        SulfurSoil.Loam => "loam",
        _ => "sand",
    };
}
