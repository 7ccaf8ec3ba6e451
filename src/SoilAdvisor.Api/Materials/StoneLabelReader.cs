using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Api.Http;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api.Materials;

/// <summary>What a label says of a liming material, from words to types.</summary>
internal static class StoneLabelReader
{
    /// <summary>The label; null when it says nothing of lime, or after a refusal.</summary>
    public static StoneLabel? Read(WrittenAnalysis? written, string pointer, Tables tables, FaultList faults)
    {
        if (written is null || written is { NeutralisingValue: null, Calcium: null, Magnesium: null, Sieves: null, SieveClasses: null, EffectiveValue: null })
        {
            return null;
        }

        return new StoneLabel
        {
            NeutralisingValue = written.NeutralisingValue?.Number,
            Calcium = written.Calcium?.Number,
            Magnesium = written.Magnesium?.Number,
            Moisture = written.Moisture?.Number,
            Sieves = Sieves(written, pointer, faults),
            Score = Score(written.EffectiveValue, PointerPath.Down(pointer, "effectiveValue"), tables, faults),
        };
    }

    private static ISieveAnalysis? Sieves(WrittenAnalysis written, string pointer, FaultList faults)
    {
        if (written is { Sieves: not null, SieveClasses: not null })
        {
            faults.Add(PointerPath.Down(pointer, "sieveClasses"), "sieve-analysis-twice", "The grind stands twice, by what passes and by class.", "Keep the one that the report prints.");
            return null;
        }

        return written.Sieves is { } sieves
            ? Kept(CumulativeSieves.Of(sieves.Select(s => ((int)s.Sieve!.Value.Number!.Value, s.Passing!.Value.Number!.Value))), PointerPath.Down(pointer, "sieves"), faults)
            : written.SieveClasses is { } classes
                ? Kept(SieveClasses.Of(classes.Select(c => new SieveClass((int?)c.Passing?.Number, (int?)c.RetainedOn?.Number, c.Percent!.Value.Number!.Value))), PointerPath.Down(pointer, "sieveClasses"), faults)
                : null;
    }

    private static ISieveAnalysis? Kept<T>(Answer<T> answer, string pointer, FaultList faults)
        where T : class, ISieveAnalysis
    {
        if (answer.TryGet(out var analysis, out var reason))
        {
            return analysis;
        }

        faults.Add(pointer, reason);
        return null;
    }

    private static LabelScore? Score(WrittenScore? written, string pointer, Tables tables, FaultList faults)
    {
        if (written is not { Index: { } id, Value.Number: { } value })
        {
            return null;
        }

        if (tables.Liming.Indexes.Any(i => i.Id == id))
        {
            return new LabelScore(id, value);
        }

        var known = tables.Liming.Indexes.Select(i => i.Id).ToList();
        var near = NearestNames.Of(id, known);
        faults.Add(
            PointerPath.Down(pointer, "index"),
            "unknown-lime-index",
            $"\"{Rules.Clip(id)}\" is not a known index of effective value.",
            $"{(near.Count > 0 ? $"Did you mean {string.Join(" or ", near)}? " : "")}Use one of: {string.Join(", ", known)}.");
        return null;
    }
}
