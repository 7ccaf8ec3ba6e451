namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>
/// A certainty in words. The thresholds are ours and are held against the percentage as printed: from 90 % a class stands by itself, from 60 % it is "probably", below that the classes that
/// share 90 % between them cannot be told apart.
/// </summary>
public static class CertaintyWords
{
    /// <summary>From here a class is said without a reservation.</summary>
    public static Probability Sure { get; } = Probability.FromFraction(0.9);

    /// <summary>From here a class is said to be probable.</summary>
    public static Probability Probable { get; } = Probability.FromFraction(0.6);

    /// <summary>For example "Low", "probably Low (62 %)" or "Low or Medium, cannot be told apart (48 % / 45 %)".</summary>
    /// <param name="classes">Classes with their probabilities; at least one.</param>
    /// <param name="read">Index of the class that the printed result falls in.</param>
    internal static string Of(IReadOnlyList<ClassProbability> classes, int read)
    {
        if (classes.Any(c => c.Probability is null))
        {
            var end = classes.OrderByDescending(c => c.AtLeast).ThenByDescending(c => c.AtMost).First();
            return end.AtLeast.WholePercent >= Sure.WholePercent ? end.Class : $"{end.Class}, at least {end.AtLeast}";
        }

        var likeliest = classes.OrderByDescending(c => c.AtLeast).ThenBy(c => Math.Abs(c.Index - read)).ToList();
        var first = likeliest[0];
        var differs = first.Index == read ? "" : $"reads {classes[read].Class}, but is ";
        if (first.AtLeast.WholePercent >= Sure.WholePercent)
        {
            return differs.Length == 0 ? first.Class : $"{differs}{first.Class} ({first.AtLeast})";
        }

        if (first.AtLeast.WholePercent >= Probable.WholePercent)
        {
            return $"{differs}probably {first.Class} ({first.AtLeast})";
        }

        var together = 0d;
        var open = likeliest.TakeWhile(c => (together += c.AtLeast.Fraction) - c.AtLeast.Fraction < Sure.Fraction).OrderBy(c => c.Index).ToList();
        return $"{Listed([.. open.Select(c => c.Class)])}, cannot be told apart ({string.Join(" / ", open.Select(c => c.AtLeast))})";
    }

    private static string Listed(string[] names) => names.Length == 1 ? names[0] : $"{string.Join(", ", names[..^1])} or {names[^1]}";
}
