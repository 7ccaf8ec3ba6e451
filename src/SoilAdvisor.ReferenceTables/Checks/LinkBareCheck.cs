using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A link is one bare web address, nothing around it and no second one.</summary>
internal sealed class LinkBareCheck : ITableCheck
{
    public string Code => "link-bare";

    public IEnumerable<TableProblem> Check(TableFolder folder) => folder.Sources.SelectMany(s => (IEnumerable<TableProblem>)
    [
        .. Fault(s.File, $"{s.Place}.link", s.Source.Link, mayHoldAnother: false),
        .. Fault(s.File, $"{s.Place}.archivedLink", s.Source.ArchivedLink, mayHoldAnother: true),
    ]);

    // A kept copy's address ends with the address it is a copy of.
    private IEnumerable<TableProblem> Fault(Document file, string member, string? link, bool mayHoldAnother) =>
        link is null || (IsBare(link) && (mayHoldAnother || link.LastIndexOf("://", StringComparison.Ordinal) == link.IndexOf("://", StringComparison.Ordinal)))
            ? []
            : [file.At(member, Code, $"\"{link}\" is not one bare web address. Write https://… alone, or null.")];

    private static bool IsBare(string link) =>
        Uri.TryCreate(link, UriKind.Absolute, out var address)
        && (address.Scheme == Uri.UriSchemeHttps || address.Scheme == Uri.UriSchemeHttp)
        && !link.Any(c => char.IsWhiteSpace(c) || c is '<' or '>' or '"' or '|');
}
