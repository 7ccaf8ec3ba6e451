using System.Globalization;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.PublishedChecks;

/// <summary>Writes a working for the message of a failed check.</summary>
internal static class WorkingText
{
    public static IEnumerable<string> Of(WorkingSheet working) => working.Lines.Select(line => string.Create(
        CultureInfo.InvariantCulture,
        $"({line.Number}) {line.Title}: {line.Shown}; {string.Join(", ", line.Inputs.Select(i => $"{i.Symbol} = {i.Value?.ToString("R", CultureInfo.InvariantCulture) ?? i.Text} {i.Unit}"))} → {line.ResultSymbol} {line.Result?.ToString("R", CultureInfo.InvariantCulture) ?? line.ResultText} {line.ResultUnit} [{line.Source.SourceId}]"));
}
