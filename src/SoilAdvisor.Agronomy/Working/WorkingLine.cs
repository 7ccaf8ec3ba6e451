namespace SoilAdvisor.Agronomy.Working;

/// <summary>One line on the board.</summary>
/// <param name="Number">From 1, in the order of the work.</param>
/// <param name="Section">Heading it stands under, for example the bed and the step.</param>
/// <param name="Formula">Id of the formula, or of the kind of look-up.</param>
/// <param name="Title">What the line answers.</param>
/// <param name="Shown">The equation, or the look-up in words; empty where a learner looks it up.</param>
/// <param name="Inputs">What went in.</param>
/// <param name="ResultSymbol">Symbol of the result; empty for a look-up.</param>
/// <param name="Result">The number; null where the result is words.</param>
/// <param name="ResultText">The words; null where the result is a number.</param>
/// <param name="ResultUnit">Unit of the number; empty for none.</param>
/// <param name="Source">Where the equation or table stands.</param>
public sealed record WorkingLine(
    int Number,
    string Section,
    string Formula,
    string Title,
    string Shown,
    IReadOnlyList<WorkingInput> Inputs,
    string ResultSymbol,
    double? Result,
    string? ResultText,
    string ResultUnit,
    Citation Source)
{
    /// <summary>True for a look-up in a table, false for arithmetic.</summary>
    public bool IsLookUp => ResultSymbol.Length == 0;

    /// <summary>False where the result needs the normal or Student's distribution: no learner works it out on paper.</summary>
    public bool IsByHand => !Shown.Contains('Φ') && !Shown.Contains("t(", StringComparison.Ordinal);

    /// <summary>
    /// The same line for a learner to complete: without its result, without what earlier lines found, and for a look-up without the row
    /// that was found. What is given or cited stays.
    /// </summary>
    public WorkingLine WithoutAnswers() => this with
    {
        Shown = IsLookUp ? "" : Shown,
        Inputs = [.. Inputs.Select(i => i.From is Origin.ComputedOn ? i with { Value = null, Text = null } : i)],
        Result = null,
        ResultText = null,
    };
}
