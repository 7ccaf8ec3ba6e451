using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>The low end of a range is not above its high end, and a high end has a low end.</summary>
internal sealed class RangeOrderedCheck : ITableCheck
{
    private static readonly (string Low, string High)[] Ranges = [("low", "high"), ("ph_low", "ph_high"), ("depth_from", "depth_to")];

    public string Code => "range-ordered";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
        from table in folder.Tables
        from range in Ranges
        where table.IndexOf(range.Low) >= 0
        from row in table.Rows
        where row.Number(range.Low) > row.Number(range.High)
        select row.At(range.High, Code, $"The range runs from {row[range.Low]} down to {row[range.High]}. Write the low end first.");
}
