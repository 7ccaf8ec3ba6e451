using SoilAdvisor.Agronomy.MethodConversions;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.MethodConversions;

/// <summary>From the checked table of conversions to the conversions.</summary>
internal static class MethodConversionBuilding
{
    public static IEnumerable<MethodConversion> Build(TableFolder folder) => folder.RowsOf(RowKinds.MethodConversions).Select(Conversion);

    private static MethodConversion Conversion(TableRow row)
    {
        var analyte = Words.Analytes.Read(row.Needed("analyte")).Value;
        return new MethodConversion(
            row.Needed("id"),
            analyte,
            MethodOf(row, analyte, "from"),
            MethodOf(row, analyte, "to"),
            row.Needed("verdict") == "convert" ? Line(row) : null,
            row["reason"],
            row.Number("highest_ph"),
            row.Needed("sample_set"),
            row.Needed("validity"),
            row["disagreement"],
            row.Citation());
    }

    private static Method MethodOf(TableRow row, Analyte analyte, string column)
    {
        Detection? detection = row.Needed(column + "_detection") is var word && word == "any" ? null : Words.Detections.Read(word).Value;
        return Words.ProceduresOf(analyte) is { } procedures
            ? Method.By(procedures.Read(row.Needed(column)).Value)
            : Method.Extracted(Words.Extractants.Read(row.Needed(column)).Value, detection);
    }

    private static ConversionLine Line(TableRow row) => new(
        row.NeededNumber("slope"),
        row.NeededNumber("intercept"),
        Words.Units.Read(row.Needed("unit")).Value,
        row.Number("lower"),
        row.Number("upper"),
        row.Number("r_squared"),
        row.NeededNumber("error"),
        row.Needed("error_basis") == "ours");
}
