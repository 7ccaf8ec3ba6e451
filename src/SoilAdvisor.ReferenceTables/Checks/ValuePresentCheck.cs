using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A row of values holds one: a figure, a range or words.</summary>
internal sealed class ValuePresentCheck : ITableCheck
{
    public string Code => "value-present";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
        from kind in (RowKind[])[RowKinds.CropValues, RowKinds.MaterialValues, RowKinds.CoverCropValues]
        from row in folder.RowsOf(kind)
        where row["value"] is null && row["low"] is null && row["high"] is null && row["text"] is null
        select row.At("value", Code, "The row holds no value. What is not known is left out, not left empty.");
}
