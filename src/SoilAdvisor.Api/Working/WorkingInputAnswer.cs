namespace SoilAdvisor.Api.Working;

/// <summary>One input of a line: a number in a unit or words, and where it comes from.</summary>
/// <param name="Symbol">Symbol in the equation.</param>
/// <param name="Name">What it stands for.</param>
/// <param name="Value">The number; left out where words were looked up.</param>
/// <param name="Text">The words; left out where a number went in.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="From">given, cited or computed.</param>
/// <param name="Where">Report line or answer, for a given one.</param>
/// <param name="Source">Source id, for a cited one.</param>
/// <param name="Locator">Place in the source, for a cited one.</param>
/// <param name="Evidence">How the cited value came to us.</param>
/// <param name="Line">Line that computed it.</param>
internal sealed record WorkingInputAnswer(
    string Symbol, string Name, decimal? Value, string? Text, string Unit, string From, string? Where, string? Source, string? Locator, string? Evidence, int? Line);
