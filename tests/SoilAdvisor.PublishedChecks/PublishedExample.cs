using System.Globalization;
using System.Text.Json;

namespace SoilAdvisor.PublishedChecks;

/// <summary>One published answer, typed by hand: where it is printed, what was read, what was given and what came out.</summary>
/// <param name="Topic">Folder it lies in; decides which part of the library is driven.</param>
/// <param name="File">File name without its ending.</param>
/// <param name="Name">Name inside the file.</param>
/// <param name="Source">Publication in words: authors, title, institution, year.</param>
/// <param name="Locator">Table, page or section.</param>
/// <param name="Read">What was read when it was typed.</param>
/// <param name="Standing">published; derived (arithmetic on published rules, no printed answer).</param>
/// <param name="Formula">Id of the catalogue formula it checks; null when it drives another part.</param>
/// <param name="Given">Inputs as printed, with units and method.</param>
/// <param name="Expected">The printed answer.</param>
/// <param name="PrintedDecimals">Decimals of the printed answer; null for a class or a date.</param>
/// <param name="WiderTolerance">Tolerance where it is wider than half the last printed digit; null otherwise.</param>
/// <param name="ToleranceReason">Why it is wider; null otherwise.</param>
/// <param name="Note">Remark; null for none.</param>
public sealed record PublishedExample(
    string Topic,
    string File,
    string Name,
    string Source,
    string Locator,
    string Read,
    string Standing,
    string? Formula,
    JsonElement Given,
    JsonElement Expected,
    int? PrintedDecimals,
    double? WiderTolerance,
    string? ToleranceReason,
    string? Note)
{
    /// <summary>Standing of an answer that a publication prints.</summary>
    public const string Published = "published";

    /// <summary>Standing of an answer worked out by hand from a published rule.</summary>
    public const string Derived = "derived";

    /// <summary>Half a unit in the last printed digit, unless a wider one is reasoned.</summary>
    public double Tolerance => WiderTolerance ?? (PrintedDecimals is { } decimals
        ? 0.5 * Math.Pow(10, -decimals)
        : throw new InvalidOperationException($"{this}: a number needs printedDecimals."));

    /// <summary>Reads the inputs of one topic; a member that the topic does not know is an error.</summary>
    /// <typeparam name="T">Shape of the inputs.</typeparam>
    public T GivenAs<T>() => Given.Deserialize<T>(PublishedExamples.Json) ?? throw new JsonException($"{this}: given is null.");

    /// <summary>Reads the answer of one topic.</summary>
    /// <typeparam name="T">Shape of the answer.</typeparam>
    public T ExpectedAs<T>() => Expected.Deserialize<T>(PublishedExamples.Json) ?? throw new JsonException($"{this}: expected is null.");

    /// <summary>Everything a reader needs to doubt a failure.</summary>
    /// <param name="got">What the library answered.</param>
    /// <param name="working">The working, line by line.</param>
    public string Explain(object? got, params IEnumerable<string> working) => string.Join(Environment.NewLine,
    [
        $"source:    {Source}",
        $"locator:   {Locator} ({Name})",
        $"read:      {Read}",
        $"given:     {Given}",
        .. working.Select(line => $"working:   {line}"),
        $"expected:  {Expected}",
        string.Create(CultureInfo.InvariantCulture, $"got:       {got}"),
        string.Create(CultureInfo.InvariantCulture, $"tolerance: {(PrintedDecimals is null && WiderTolerance is null ? "exact" : Tolerance)} {ToleranceReason}"),
        $"note:      {Note}",
        $"file:      examples/{Topic}/{File}.json",
    ]);

    /// <summary>Fails with everything when a number lies outside the printed answer's tolerance.</summary>
    /// <param name="expected">Printed number.</param>
    /// <param name="got">Our number in the same unit.</param>
    /// <param name="working">The working, line by line.</param>
    public void AgreesWith(double expected, double got, params IEnumerable<string> working)
    {
        // The printed number itself carries noise of 1e-12 as a double; a tolerance must not fail on that.
        var agrees = Math.Abs(got - expected) <= Tolerance + (1e-9 * Math.Max(1, Math.Abs(expected)));
        Assert.True(agrees, agrees ? null : Explain(got, working));
    }

    /// <summary>The bulletin and the place in it, so that a list of checks reads as a bibliography.</summary>
    public override string ToString() => $"{Source}, {Locator}: {Name}";
}
