using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>The document of a lime table names exactly the target pH values and the span of buffer pH that its cells cover.</summary>
internal sealed class LimeCellsFitCheck : ITableCheck
{
    public string Code => "lime-cells-fit";

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        foreach (var document in folder.LimeMethods)
        {
            var cells = folder.RowsIn(document.Folder, RowKinds.LimeCells);
            if (cells.Count == 0)
            {
                continue;
            }
            var targets = cells.Select(c => c.Number("target_ph")).OfType<decimal>().Distinct().Order().ToList();
            if (!targets.SequenceEqual((document.Value.Targets ?? []).Order()))
            {
                yield return document.At("targets", Code, $"The cells are printed for a target pH of {Join(targets)}; the document names {Join(document.Value.Targets ?? [])}.");
            }
            var buffers = cells.Select(c => c.Number("buffer_ph")).OfType<decimal>().ToList();
            if (buffers.Count > 0 && (document.Value.BufferFrom != buffers.Min() || document.Value.BufferTo != buffers.Max()))
            {
                yield return document.At("bufferFrom", Code, string.Create(CultureInfo.InvariantCulture, $"The cells run from buffer pH {buffers.Min()} to {buffers.Max()}; the document says {document.Value.BufferFrom} to {document.Value.BufferTo}."));
            }
        }
    }

    private static string Join(IEnumerable<decimal> values) => string.Join(", ", values.Select(v => v.ToString("0.0#", CultureInfo.InvariantCulture)));
}
