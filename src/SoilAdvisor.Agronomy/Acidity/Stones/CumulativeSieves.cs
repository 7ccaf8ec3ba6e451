using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>A sieve analysis that prints what passes each sieve, so that the figures fall from coarse to fine.</summary>
public sealed class CumulativeSieves : ISieveAnalysis
{
    private readonly SortedDictionary<int, decimal> passing;

    private CumulativeSieves(SortedDictionary<int, decimal> passing) => this.passing = passing;

    /// <inheritdoc/>
    public IReadOnlyList<Assumption> Noticed => [];

    /// <summary>Reads the figures; refused when a sieve stands twice, a figure is outside 0 to 100 %, or more passes a finer sieve than a coarser one.</summary>
    /// <param name="rows">Sieve number and percent that passes.</param>
    public static Answer<CumulativeSieves> Of(IEnumerable<(int Mesh, decimal Passing)> rows)
    {
        var sorted = new SortedDictionary<int, decimal>();
        foreach (var (mesh, share) in rows)
        {
            if (share is < 0 or > 100 || mesh <= 0 || !sorted.TryAdd(mesh, share))
            {
                return Refuse(Invariant($"Sieve {mesh} stands twice or has {share} % passing."), "Give each sieve once, with 0 to 100 % passing.");
            }
        }

        foreach (var (coarse, fine) in sorted.Zip(sorted.Skip(1)))
        {
            if (fine.Value > coarse.Value)
            {
                return Refuse(
                    Invariant($"More passes sieve {fine.Key} ({fine.Value} %) than the coarser sieve {coarse.Key} ({coarse.Value} %)."),
                    "These look like figures by class. Give them as sieveClasses, or check the report.");
            }
        }

        return Answer<CumulativeSieves>.Given(new CumulativeSieves(sorted));
    }

    /// <inheritdoc/>
    public PassingShare? Passing(int mesh)
    {
        if (passing.TryGetValue(mesh, out var share))
        {
            return PassingShare.FromPercent((double)share);
        }

        // What passes a finer sieve whole passes every coarser one, and what stops at a coarser one reaches no finer one.
        return passing.Any(p => p.Key > mesh && p.Value == 100)
            ? PassingShare.FromPercent(100)
            : passing.Any(p => p.Key < mesh && p.Value == 0) ? PassingShare.FromPercent(0) : null;
    }

    /// <inheritdoc/>
    public SieveClassShare? Between(int passing, int retainedOn) => Passing(passing) is { } coarse && Passing(retainedOn) is { } fine
        ? SieveClassShare.FromPercent(coarse.Percent - fine.Percent)
        : null;

    private static Answer<CumulativeSieves> Refuse(string message, string suggestion) => Answer<CumulativeSieves>.Refused("sieve-analysis", message, suggestion);
}
