using System.Globalization;

namespace SoilAdvisor.Agronomy.Working;

/// <summary>
/// An equation that sums over as many members as there are: the feedstocks of a heap, the days of a log. Each symbol of a member carries
/// its number: Q1, Q2, … For a given number of members it is an ordinary formula, and that is what the working shows.
/// </summary>
/// <typeparam name="TMember">One member.</typeparam>
/// <typeparam name="TOut">Result.</typeparam>
public sealed class SeriesFormula<TMember, TOut> : IFormula
{
    private static readonly char[] Digits = [.. "0123456789"];

    private readonly Func<int, Formula<IReadOnlyList<TMember>, TOut>> of;
    private readonly Formula<IReadOnlyList<TMember>, TOut> shortest;
    private readonly string[] letters;

    /// <summary>Makes a formula over a series.</summary>
    /// <param name="least">Fewest members, at least 1.</param>
    /// <param name="most">Most members.</param>
    /// <param name="of">The formula of a number of members; its symbols end in the member's number, from 1.</param>
    public SeriesFormula(int least, int most, Func<int, Formula<IReadOnlyList<TMember>, TOut>> of)
    {
        (Series, this.of) = ((least, most), of);
        shortest = of(least);
        letters = [.. shortest.Inputs.Select(s => s.Name.TrimEnd(Digits)).Distinct(StringComparer.Ordinal)];
    }

    /// <inheritdoc/>
    public string Id => shortest.Id;

    /// <inheritdoc/>
    public string Title => shortest.Title;

    /// <inheritdoc/>
    public string Shown => shortest.Shown;

    /// <inheritdoc/>
    public Citation Source => shortest.Source;

    /// <inheritdoc/>
    public IReadOnlyList<Symbol> Inputs => shortest.Inputs;

    /// <inheritdoc/>
    public Symbol Result => shortest.Result;

    /// <inheritdoc/>
    public string? WhyUnchecked => shortest.WhyUnchecked;

    /// <inheritdoc/>
    public (int Least, int Most)? Series { get; }

    /// <summary>Evaluates the formula for as many members as are given.</summary>
    /// <param name="members">The members; between the fewest and the most.</param>
    /// <param name="working">Receives a line; null for none.</param>
    /// <param name="from">Where each input comes from, in the order of the symbols; ignored without working.</param>
    public TOut Of(IReadOnlyList<TMember> members, WorkingSheet? working = null, params ReadOnlySpan<Origin> from) =>
        of(Math.Clamp(members.Count, Series!.Value.Least, Series.Value.Most)).Of(members, working, from);

    /// <inheritdoc/>
    public Answer<double> Calculate(IReadOnlyDictionary<string, double> inputs, WorkingSheet? working = null, IReadOnlyList<Origin>? from = null) =>
        of(MembersIn(inputs.Keys)).Calculate(inputs, working, from);

    // As many as the highest number that a known letter carries. A missing member is then named like any missing symbol.
    private int MembersIn(IEnumerable<string> names)
    {
        var members = Series!.Value.Least;
        foreach (var name in names)
        {
            var letter = name.TrimEnd(Digits);
            if (letters.Contains(letter, StringComparer.Ordinal) && int.TryParse(name.AsSpan(letter.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            {
                members = Math.Max(members, Math.Min(number, Series.Value.Most));
            }
        }

        return members;
    }
}
