using System.Globalization;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Paper;

/// <summary>A publication that a report uses, with its numbered places.</summary>
internal sealed record UsedSource(string Id, Source? Source, IReadOnlyList<(int Number, Citation Place)> Places)
{
    /// <summary>Authors, title, publisher, edition, year, and what was read of it.</summary>
    public string Description => Source is null
        ? $"{Id} (not in the bibliography of these tables)"
        : string.Join(". ", new[] { Source.Authors, Source.Title, Source.Publisher == Source.Authors ? null : Source.Publisher, Source.Edition, Year, Source.Note }.OfType<string>().Select(p => p.TrimEnd('.'))) + ".";

    // An edition that is the year itself is not printed twice.
    private string? Year => Source?.Year?.ToString(CultureInfo.InvariantCulture) is { } year && year != Source.Edition ? year : null;
}
