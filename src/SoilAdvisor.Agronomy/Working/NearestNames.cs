namespace SoilAdvisor.Agronomy.Working;

/// <summary>Offers the known names nearest to one that is not known, by edit distance, so that a refusal can say what was meant.</summary>
public static class NearestNames
{
    /// <summary>Up to <paramref name="most"/> known names, nearest first; empty when none is near.</summary>
    /// <param name="text">What was received.</param>
    /// <param name="known">All known names.</param>
    /// <param name="most">How many at most.</param>
    public static IReadOnlyList<string> Of(string text, IEnumerable<string> known, int most = 3)
    {
        // Beyond 64 letters nothing that we know is near, and the table would grow with hostile input.
        var sought = text.Length > 64 ? text[..64] : text;
        return
        [
            .. known
                .Select(name => (name, distance: Distance(sought, name)))
                .Where(c => c.distance <= Math.Max(2, Math.Min(sought.Length, c.name.Length) / 2) || c.name.Contains(sought, StringComparison.OrdinalIgnoreCase))
                .OrderBy(c => c.distance)
                .ThenBy(c => c.name, StringComparer.Ordinal)
                .Select(c => c.name)
                .Take(most),
        ];
    }

    private static int Distance(string a, string b)
    {
        var previous = Enumerable.Range(0, b.Length + 1).ToArray();
        var current = new int[b.Length + 1];
        for (var i = 1; i <= a.Length; i++)
        {
            current[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var change = char.ToUpperInvariant(a[i - 1]) == char.ToUpperInvariant(b[j - 1]) ? 0 : 1;
                current[j] = Math.Min(Math.Min(current[j - 1] + 1, previous[j] + 1), previous[j - 1] + change);
            }

            (previous, current) = (current, previous);
        }

        return previous[b.Length];
    }
}
