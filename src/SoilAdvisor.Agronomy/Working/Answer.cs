using System.Diagnostics.CodeAnalysis;

namespace SoilAdvisor.Agronomy.Working;

/// <summary>
/// Either a value or the reason why there is none. Default is a refusal without words, which only a bug can produce;
/// reading <see cref="Reason"/> of it throws.
/// </summary>
/// <typeparam name="T">Type of the value.</typeparam>
public readonly struct Answer<T>
{
    private readonly T value;
    private readonly Refusal? refusal;
    private readonly bool given;

    private Answer(T value, Refusal? refusal, bool given) => (this.value, this.refusal, this.given) = (value, refusal, given);

    /// <summary>True when there is a value.</summary>
    public bool IsGiven => given;

    /// <summary>The value. Throws when the answer is a refusal: ask <see cref="IsGiven"/> first or use <see cref="TryGet"/>.</summary>
    public T Value => given ? value : throw new InvalidOperationException($"No value: {refusal?.Message}");

    /// <summary>The refusal. Throws when there is a value.</summary>
    public Refusal Reason => refusal ?? throw new InvalidOperationException("The answer is given; there is no refusal.");

    /// <summary>An answer with a value.</summary>
    /// <param name="value">The value.</param>
    public static Answer<T> Given(T value) => new(value, null, true);

    /// <summary>An answer without a value.</summary>
    /// <param name="refusal">Why.</param>
    public static Answer<T> Refused(Refusal refusal) => new(default!, refusal, false);

    /// <summary>An answer without a value.</summary>
    /// <param name="code">Stable code.</param>
    /// <param name="message">Why.</param>
    /// <param name="suggestion">What to do.</param>
    public static Answer<T> Refused(string code, string message, string suggestion) => Refused(new Refusal(code, message, suggestion));

    /// <summary>Reads the value or the refusal in one step.</summary>
    /// <param name="answer">The value when there is one.</param>
    /// <param name="reason">The refusal when there is none.</param>
    public bool TryGet([MaybeNullWhen(false)] out T answer, [NotNullWhen(false)] out Refusal? reason)
    {
        answer = value;
        reason = refusal;
        return given;
    }

    /// <summary>Applies a step that cannot fail.</summary>
    /// <typeparam name="TNext">Type of the next value.</typeparam>
    /// <param name="step">The step.</param>
    public Answer<TNext> Select<TNext>(Func<T, TNext> step) =>
        given ? Answer<TNext>.Given(step(value)) : Answer<TNext>.Refused(Reason);

    /// <summary>Applies a step that may refuse.</summary>
    /// <typeparam name="TNext">Type of the next value.</typeparam>
    /// <param name="step">The step.</param>
    public Answer<TNext> Then<TNext>(Func<T, Answer<TNext>> step) =>
        given ? step(value) : Answer<TNext>.Refused(Reason);
}
