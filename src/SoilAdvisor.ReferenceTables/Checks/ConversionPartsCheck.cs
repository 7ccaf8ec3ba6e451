using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A conversion has a rising line with an error, or a reason why there is none, and names methods by which its analyte is measured.</summary>
internal sealed class ConversionPartsCheck : ITableCheck
{
    private static readonly string[] OfLine = ["slope", "intercept", "unit", "error", "error_basis"];

    public string Code => "conversion-parts";

    public IEnumerable<TableProblem> Check(TableFolder folder) => folder.RowsOf(RowKinds.MethodConversions).SelectMany(row => Methods(row).Concat(row["verdict"] == "convert" ? Line(row) : Warning(row)));

    private IEnumerable<TableProblem> Methods(TableRow row)
    {
        if (row["analyte"] is not { } word || !Words.Analytes.Ids.Contains(word))
        {
            yield break;
        }
        var known = Words.ProceduresOf(Words.Analytes.Read(word).Value)?.Ids ?? Words.Extractants.Ids;
        foreach (var column in new[] { "from", "to" })
        {
            if (row[column] is { } method && !known.Contains(method))
            {
                yield return row.At(column, Code, $"\"{method}\" is not a method for {word}. Known: {string.Join(", ", known)}.");
            }
        }
        if (row["from"] == row["to"] && row["from_detection"] == row["to_detection"])
        {
            yield return row.At("to", Code, "The conversion leads to where it starts.");
        }
    }

    private IEnumerable<TableProblem> Line(TableRow row)
    {
        foreach (var column in OfLine.Where(c => row[c] is null))
        {
            yield return row.At(column, Code, "A conversion needs slope, intercept, unit, error and error_basis. Without them write refuse, and the reason.");
        }
        foreach (var column in new[] { "slope", "error" }.Where(c => row.Number(c) <= 0))
        {
            yield return row.At(column, Code, "Slope and error of a conversion are above zero.");
        }
        if (row["reason"] is not null)
        {
            yield return row.At("reason", Code, "A conversion that is used has no reason against it; what limits it stands under validity.");
        }
        if (row.Number("lower") > row.Number("upper"))
        {
            yield return row.At("upper", Code, $"The range runs from {row["lower"]} down to {row["upper"]}. Write the low end first.");
        }
    }

    private IEnumerable<TableProblem> Warning(TableRow row)
    {
        if (row["reason"] is null)
        {
            yield return row.At("reason", Code, "Say why nothing is converted.");
        }
        foreach (var column in OfLine.Where(c => row[c] is not null))
        {
            yield return row.At(column, Code, "A conversion that is refused has no line; leave the cell empty.");
        }
    }
}
