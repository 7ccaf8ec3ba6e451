using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A change of a soil test that is calculated with belongs to one extractant and has its figures in the unit that they need; the others are words.</summary>
internal sealed class TestChangeFitsCheck : ITableCheck
{
    private const string PoundsForOne = "lb/acre per mg/kg";

    public string Code => "test-change-fits";

    public IEnumerable<TableProblem> Check(TableFolder folder) => folder.RowsOf(RowKinds.TestChanges).SelectMany(row => row["used_for"] switch
    {
        "projection" => Projection(row),
        "drawdown" => Drawdown(row),
        _ => Information(row),
    });

    private IEnumerable<TableProblem> Projection(TableRow row)
    {
        if (row["extractant"] is null || row["printed_for"] is null)
        {
            yield return row.At(row["extractant"] is null ? "extractant" : "printed_for", Code, "Pounds that move a test belong to one extractant. Name it, and the one that they were printed for.");
        }

        if (row["extractant"] != row["printed_for"] && row["evidence"] != "ours")
        {
            yield return row.At("evidence", Code, "A figure that is carried over to another extractant is ours. Write ours, and the reason as the note.");
        }

        if (row["unit"] != PoundsForOne || row.Number("value") is not > 0)
        {
            yield return row.At("value", Code, $"A row used for projection needs a figure above 0 in {PoundsForOne}.");
        }

        if (row.Number("band_factor") is not >= 1)
        {
            yield return row.At("band_factor", Code, "Say how far soils lie apart: four in five between the figure divided and multiplied by band_factor, 1 or more.");
        }
    }

    private IEnumerable<TableProblem> Drawdown(TableRow row)
    {
        if (row["nutrient"] != "P2O5" || row["extractant"] is null || row["unit"] != "%/year" || row.Number("low") is not > 0 || row.Number("high") is not < 100)
        {
            yield return row.At("used_for", Code, "A drawdown is the share by which a phosphorus test falls in a year: nutrient P2O5, an extractant, and low and high between 0 and 100 %/year.");
        }
    }

    private IEnumerable<TableProblem> Information(TableRow row)
    {
        if (row["text"] is null)
        {
            yield return row.At("text", Code, "A row that is not calculated with says what it says: write the sentence as text.");
        }
    }
}
