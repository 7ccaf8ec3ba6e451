using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>Carbon to nitrogen: a threshold has its own end and no share, and the predicted classes leave no gap and overlap nowhere.</summary>
internal sealed class CarbonRatioCheck : ITableCheck
{
    public string Code => "carbon-ratio";

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        var rows = folder.RowsOf(RowKinds.CarbonToNitrogen).ToList();
        foreach (var row in rows.Where(r => r["rule"] == "net-release" && (r["ratio_below"] is null || r["high"] is not null)))
        {
            yield return row.At("ratio_below", Code, "A threshold of net release has the ratio below which nitrogen is released, and no share.");
        }

        foreach (var row in rows.Where(r => r["rule"] == "tie-up" && (r["ratio_from"] is null || r["high"] is not null)))
        {
            yield return row.At("ratio_from", Code, "A threshold of tie-up has the ratio above which nitrogen is tied up, and no share.");
        }

        var classes = rows.Where(r => r["rule"] == "predicted-share").ToList();
        foreach (var (row, before) in classes.Zip(classes.Prepend(null)))
        {
            if (row["ratio_from"] != before?["ratio_below"] || row["high"] is null)
            {
                yield return row.At("ratio_from", Code, "A class begins where the one before it ends, the first with an empty cell, and has a high end.");
            }
        }

        if (classes.Count > 0 && classes[^1]["ratio_below"] is not null)
        {
            yield return classes[^1].At("ratio_below", Code, "The last class is open: leave its end empty.");
        }
    }
}
