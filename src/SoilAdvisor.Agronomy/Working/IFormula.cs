namespace SoilAdvisor.Agronomy.Working;

/// <summary>A formula as a catalogue sees it: numbers by symbol, in the units that the formula states.</summary>
public interface IFormula
{
    /// <summary>Permanent kebab-case id.</summary>
    string Id { get; }

    /// <summary>What it answers, in trade words.</summary>
    string Title { get; }

    /// <summary>The equation as a teacher would write it.</summary>
    string Shown { get; }

    /// <summary>Where the equation stands.</summary>
    Citation Source { get; }

    /// <summary>The letters on the right-hand side, in order.</summary>
    IReadOnlyList<Symbol> Inputs { get; }

    /// <summary>The letter on the left-hand side.</summary>
    Symbol Result { get; }

    /// <summary>Why no published worked example exists for it; null when one does.</summary>
    string? WhyUnchecked { get; }

    /// <summary>
    /// Fewest and most members where the equation sums over a series whose symbols carry the member's number (Q1, Q2, …); then
    /// <see cref="Shown"/> and <see cref="Inputs"/> are those of the fewest. Null for every other formula.
    /// </summary>
    (int Least, int Most)? Series => null;

    /// <summary>
    /// Evaluates it on numbers in the stated units. Refuses a missing or unknown symbol, a number that is not finite, and a number
    /// outside the published range, all named.
    /// </summary>
    /// <param name="inputs">Number by symbol.</param>
    /// <param name="working">Receives the line; null for none.</param>
    /// <param name="from">Where each input comes from, in the order of the symbols; null for the user's own numbers.</param>
    Answer<double> Calculate(IReadOnlyDictionary<string, double> inputs, WorkingSheet? working = null, IReadOnlyList<Origin>? from = null);
}
