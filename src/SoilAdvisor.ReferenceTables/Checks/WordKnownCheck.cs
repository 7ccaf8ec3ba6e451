using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A word of a closed list is one that the program knows: analytes, textures, standings, buffers and so on.</summary>
internal sealed class WordKnownCheck : ITableCheck
{
    private static readonly string[] CalibrationWords = ["vegetables", "field-crops", "general"];
    private static readonly string[] AreaBasisWords = ["broadcast-acre"];

    public string Code => "word-known";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
    [
        .. TableCell.Of(folder).SelectMany(Faults),
        .. folder.Guides.SelectMany(d => Fault(d, "calibratedOn", d.Value.CalibratedOn, CalibrationWords)),
        .. folder.RateTables.SelectMany(d => Fault(d, "areaBasis", d.Value.AreaBasis, AreaBasisWords)),
        .. folder.LimeMethods.SelectMany(d => Fault(d, "basis", d.Value.Basis, LimeBasis.Ids)),
        .. folder.LimeMethods.SelectMany(d => d.Value.Buffers.SelectMany((word, i) => Fault(d, string.Create(CultureInfo.InvariantCulture, $"buffers[{i}]"), word, Words.ProceduresOf(Analyte.BufferPh)!.Ids))),
        .. folder.LimeMethods.SelectMany(d => Fault(d, "reads", d.Value.Reads, LimeWords.Reads.Ids)),
        .. folder.LimeMethods.SelectMany(d => Fault(d, "soil", d.Value.Soil ?? "any", LimeWords.Soils.Ids)),
        .. folder.LimeMethods.SelectMany(d => Fault(d, "rows", d.Value.Rows ?? "points", LimeWords.Rows.Ids)),
        .. folder.LimeMethods.Where(d => d.Value.SaltScale is not null).SelectMany(d => Fault(d, "saltScale", d.Value.SaltScale!, Words.ProceduresOf(Analyte.Ph)!.Ids)),
    ];

    private IEnumerable<TableProblem> Faults(TableCell cell)
    {
        if (cell.Text is null || cell.Column is "unit" or "evidence")
        {
            return [];
        }
        if (cell.Column == "soil_group")
        {
            return cell.Row.Parts(cell.Column).Where(word => !Words.SoilGroups.Ids.Contains(word)).Select(word => cell.Fault(Code, Say(word, Words.SoilGroups.Ids)));
        }
        return cell.Kind?.Words is { } known && !known.Contains(cell.Text) ? [cell.Fault(Code, Say(cell.Text, known))] : [];
    }

    private IEnumerable<TableProblem> Fault(Document document, string member, string word, IReadOnlyCollection<string> known) =>
        known.Contains(word) ? [] : [document.At(member, Code, Say(word, known))];

    private static string Say(string word, IReadOnlyCollection<string> known) => NearestNames.Of(word, known) is { Count: > 0 } near
        ? $"\"{word}\" is not known. Did you mean {string.Join(" or ", near)}?"
        : $"\"{word}\" is not known. Known: {string.Join(", ", known)}.";
}
