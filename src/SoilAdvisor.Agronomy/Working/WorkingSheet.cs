namespace SoilAdvisor.Agronomy.Working;

/// <summary>
/// The arithmetic as it happened, line by line. Keeps numbers only; text is made when it is rendered.
/// Not thread-safe: one calculation, one working.
/// </summary>
public sealed class WorkingSheet
{
    private readonly List<WorkingLine> lines = [];
    private string section = "";

    /// <summary>The lines so far.</summary>
    public IReadOnlyList<WorkingLine> Lines => lines;

    /// <summary>Number of the last line; 0 before the first.</summary>
    public int LastLine => lines.Count;

    /// <summary>Starts a new heading for the lines that follow.</summary>
    /// <param name="heading">For example "Bed 3: phosphorus".</param>
    public void Section(string heading) => section = heading;

    /// <summary>Writes down one evaluated formula.</summary>
    /// <typeparam name="TIn">Inputs.</typeparam>
    /// <typeparam name="TOut">Result.</typeparam>
    /// <param name="formula">The formula.</param>
    /// <param name="x">Its inputs.</param>
    /// <param name="y">Its result.</param>
    /// <param name="from">Where each input comes from.</param>
    public void Line<TIn, TOut>(Formula<TIn, TOut> formula, TIn x, TOut y, ReadOnlySpan<Origin> from) =>
        lines.Add(new WorkingLine(lines.Count + 1, section, formula.Id, formula.Title, formula.Shown, formula.Read(x, from), formula.Result.Name, formula.Read(y), null, formula.Result.Unit, formula.Source));

    /// <summary>Writes down a look-up: which row of a table was taken, and why.</summary>
    /// <param name="kind">Kebab-case kind of look-up, for example "rating".</param>
    /// <param name="title">What it answers.</param>
    /// <param name="shown">The look-up in words, for example "26 ≤ P ≤ 50 mg/kg".</param>
    /// <param name="inputs">What was looked up.</param>
    /// <param name="result">What was found, in words.</param>
    /// <param name="source">The table.</param>
    public void LookUp(string kind, string title, string shown, IReadOnlyList<WorkingInput> inputs, string result, Citation source) =>
        lines.Add(new WorkingLine(lines.Count + 1, section, kind, title, shown, inputs, "", null, result, "", source));
}
