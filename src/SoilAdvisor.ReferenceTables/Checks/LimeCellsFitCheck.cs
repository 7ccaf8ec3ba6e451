using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>
/// Each cell is entered by what its method reads and by nothing else; the document of a lime table names exactly the target pH values and
/// the span of buffer pH that its cells cover.
/// </summary>
internal sealed class LimeCellsFitCheck : ITableCheck
{
    private static readonly string[] Entries = ["buffer_ph", "acidity", "soil_ph"];

    public string Code => "lime-cells-fit";

    public IEnumerable<TableProblem> Check(TableFolder folder) => folder.LimeMethods.SelectMany(d => Faults(d, folder));

    private IEnumerable<TableProblem> Faults(Document<LimeMethodDocument> document, TableFolder folder)
    {
        var method = document.Value;
        if (method.Kind == LimeMethodDocument.TargetEquations && folder.TableIn(document.Folder, RowKinds.LimeEquations) is { } equations)
        {
            foreach (var problem in Targets(document, equations.Rows, "equations"))
            {
                yield return problem;
            }
        }
        var cells = folder.RowsIn(document.Folder, RowKinds.LimeCells);
        if (cells.Count == 0)
        {
            yield break;
        }
        var entry = method.Reads.Replace('-', '_');
        foreach (var cell in cells)
        {
            if (Entries.Any(column => cell[column] is null == (column == entry)))
            {
                yield return cell.At(entry, Code, $"The method reads {method.Reads}: a cell gives {entry} and no other of {string.Join(", ", Entries)}.");
            }
        }
        foreach (var problem in Targets(document, cells, "cells"))
        {
            yield return problem;
        }
        var buffers = cells.Select(c => c.Number("buffer_ph")).OfType<decimal>().ToList();
        if (buffers.Count > 0 && (method.BufferFrom != buffers.Min() || method.BufferTo != buffers.Max()))
        {
            yield return document.At("bufferFrom", Code, string.Create(CultureInfo.InvariantCulture, $"The cells run from buffer pH {buffers.Min()} to {buffers.Max()}; the document says {method.BufferFrom} to {method.BufferTo}."));
        }
    }

    private IEnumerable<TableProblem> Targets(Document<LimeMethodDocument> document, IReadOnlyList<TableRow> rows, string what)
    {
        var targets = rows.Select(c => c.Number("target_ph")).OfType<decimal>().Distinct().Order().ToList();
        if (!targets.SequenceEqual((document.Value.Targets ?? []).Order()))
        {
            yield return document.At("targets", Code, $"The {what} are printed for a target pH of {Join(targets)}; the document names {Join(document.Value.Targets ?? [])}.");
        }
    }

    private static string Join(IEnumerable<decimal> values) => string.Join(", ", values.Select(v => v.ToString("0.0#", CultureInfo.InvariantCulture)));
}
