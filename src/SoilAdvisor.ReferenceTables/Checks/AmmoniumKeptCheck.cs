using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>Ammonium kept: days stand where manure is worked in and nowhere else, and a day later never keeps more.</summary>
internal sealed class AmmoniumKeptCheck : ITableCheck
{
    public string Code => "ammonium-kept";

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        var rows = folder.RowsOf(RowKinds.AmmoniumKept).ToList();
        foreach (var row in rows.Where(r => (r["how"] == "incorporated") != (r["within_days"] is not null)))
        {
            yield return row.At("within_days", Code, "Days to working in stand in a row of worked-in manure, and in no other.");
        }

        foreach (var table in rows.Where(r => r["within_days"] is not null).GroupBy(r => (r["retention"], r["weather"])))
        {
            var ordered = table.OrderBy(r => r.Number("within_days")).ToList();
            foreach (var (later, earlier) in ordered.Skip(1).Zip(ordered).Where(p => p.First.Number("kept") > p.Second.Number("kept")))
            {
                yield return later.At("kept", Code, $"More is kept than a day earlier ({earlier["kept"]} %).");
            }
        }
    }
}
