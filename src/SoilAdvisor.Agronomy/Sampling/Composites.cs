using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>
/// Beds may share a composite where they have one soil, one crop history and one history of amendments, and lie all in the open or all under
/// tunnels. A composite shows their mean and hides how far they lie apart, so what is not stated keeps beds apart.
/// </summary>
public static class Composites
{
    private static readonly Assumption Rule = new(
        "composite-rule",
        "One composite is taken from beds of one soil, crop history and amendments; high tunnels apart from field beds.",
        Citation.CommonPractice);

    /// <summary>Groups beds into composites.</summary>
    /// <param name="beds">The beds; ids are unique.</param>
    public static CompositePlan For(IReadOnlyList<SampledBed> beds)
    {
        var apart = new List<BedsApart>();
        var composites = new List<List<SampledBed>>();
        for (var i = 0; i < beds.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (Reasons(beds[j], beds[i]) is { Count: > 0 } reasons)
                {
                    apart.Add(new BedsApart(beds[j].Id, beds[i].Id, reasons));
                }
            }

            // What keeps two beds apart is a difference or a gap in the records, so a bed that fits one member of a composite fits all.
            if (composites.Find(c => Reasons(c[0], beds[i]).Count == 0) is { } fitting)
            {
                fitting.Add(beds[i]);
            }
            else
            {
                composites.Add([beds[i]]);
            }
        }

        return new CompositePlan(
            [.. composites.Select(IReadOnlyList<string> (c) => [.. c.Select(b => b.Id)])],
            apart,
            beds.Any(b => b.Site is null)
                ? [Rule, new Assumption("site-taken-as-field", $"Not stated whether under a tunnel, taken as in the open: {string.Join(", ", beds.Where(b => b.Site is null).Select(b => b.Id))}.", Citation.OurJudgement)]
                : [Rule]);
    }

    private static List<string> Reasons(SampledBed first, SampledBed second)
    {
        var reasons = new List<string>();
        if ((first.Site ?? GrowingSite.Field) != (second.Site ?? GrowingSite.Field))
        {
            reasons.Add($"{(first.Site == GrowingSite.HighTunnel ? first.Id : second.Id)} lies under a high tunnel, the other in the open.");
        }

        Compare(reasons, "soil", first, second, bed => bed.Soil is { } soil ? [soil] : null);
        Compare(reasons, "crop history", first, second, bed => bed.CropHistory);
        Compare(reasons, "history of amendments", first, second, bed => bed.Amendments);
        return reasons;
    }

    private static void Compare(List<string> reasons, string what, SampledBed first, SampledBed second, Func<SampledBed, IReadOnlyList<string>?> read)
    {
        var (one, two) = (read(first), read(second));
        if (one is null || two is null)
        {
            var silent = one is null && two is null ? $"{first.Id} and {second.Id}" : one is null ? first.Id : second.Id;
            reasons.Add($"The {what} of {silent} is not stated.");
        }
        else if (!Plain(one).SetEquals(Plain(two)))
        {
            reasons.Add($"The {what} differs: {Listed(one)} ({first.Id}); {Listed(two)} ({second.Id}).");
        }
    }

    private static HashSet<string> Plain(IReadOnlyList<string> words) =>
        new(words.Select(w => string.Join(' ', w.Split(' ', StringSplitOptions.RemoveEmptyEntries))), StringComparer.OrdinalIgnoreCase);

    private static string Listed(IReadOnlyList<string> words) => words.Count == 0 ? "none" : string.Join(", ", words);
}
