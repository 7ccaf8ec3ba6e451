using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>A sieve analysis that prints what lies between each two sieves, so that the figures add up to the whole.</summary>
public sealed class SieveClasses : ISieveAnalysis
{
    /// <summary>How far the classes may be from 100 %, in percent. Ours: printed examples are off by one.</summary>
    public const decimal Room = 2;

    private readonly IReadOnlyList<SieveClass> fromCoarse;

    private SieveClasses(IReadOnlyList<SieveClass> fromCoarse, IReadOnlyList<Assumption> noticed) => (this.fromCoarse, Noticed) = (fromCoarse, noticed);

    /// <inheritdoc/>
    public IReadOnlyList<Assumption> Noticed { get; }

    /// <summary>
    /// Reads the classes, coarsest to finest in any order. Refused when they leave a gap, overlap, lack the finest class, or are more than
    /// 2 % from 100; a smaller difference is said and what is missing counts as nothing.
    /// </summary>
    /// <param name="classes">The classes.</param>
    public static Answer<SieveClasses> Of(IEnumerable<SieveClass> classes)
    {
        var sorted = classes.OrderBy(c => c.Passing ?? 0).ToList();
        if (sorted.Count == 0 || sorted.Any(c => c.Percent is < 0 or > 100) || sorted[^1].RetainedOn is not null)
        {
            return Refuse("The classes hold a figure outside 0 to 100 %, or lack the finest class.", "Give each class from 0 to 100 %; the finest passes a sieve and has no retainedOn.");
        }

        foreach (var (coarse, fine) in sorted.Zip(sorted.Skip(1)))
        {
            if (coarse.RetainedOn is not { } sieve || fine.Passing != sieve)
            {
                return Refuse(
                    Invariant($"The class that stays on {coarse.RetainedOn?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "no sieve"} is not followed by one that passes the same sieve."),
                    "Give classes that join, such as 8 to 20, 20 to 60 and finer than 60.");
            }
        }

        var sum = sorted.Sum(c => c.Percent);
        if (Math.Abs(sum - 100) > Room)
        {
            return Refuse(Invariant($"The size classes add up to {sum} %, not to 100 %."), "If the report prints what passes each sieve, give it as sieves; otherwise check the figures.");
        }

        return Answer<SieveClasses>.Given(new SieveClasses(
            sorted,
            sum == 100 ? [] : [new Assumption("sieve-classes-sum", Invariant($"The size classes add up to {sum} %, not to 100 %. They are used as printed."), Citation.OurJudgement)]));
    }

    /// <inheritdoc/>
    public PassingShare? Passing(int mesh)
    {
        if (fromCoarse.Any(c => c.Passing == mesh))
        {
            return PassingShare.FromPercent(Math.Min(100, (double)fromCoarse.Where(c => c.Passing >= mesh).Sum(c => c.Percent)));
        }

        // Nothing is coarser than the coarsest sieve named, unless a class says so.
        return fromCoarse[0].Passing is { } coarsest && mesh < coarsest ? PassingShare.FromPercent(100) : null;
    }

    /// <inheritdoc/>
    public SieveClassShare? Between(int passing, int retainedOn)
    {
        var within = fromCoarse.Where(c => c.Passing >= passing && c.RetainedOn <= retainedOn).ToList();
        var coarsest = fromCoarse[0].Passing;
        var startsThere = within.Count > 0 && (within[0].Passing == passing || (within[0].Passing == coarsest && passing < coarsest));
        return startsThere && within[^1].RetainedOn == retainedOn
            ? SieveClassShare.FromPercent(Math.Min(100, (double)within.Sum(c => c.Percent)))
            : null;
    }

    private static Answer<SieveClasses> Refuse(string message, string suggestion) => Answer<SieveClasses>.Refused("sieve-analysis", message, suggestion);
}
