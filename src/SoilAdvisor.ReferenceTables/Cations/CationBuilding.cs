using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Cations;

/// <summary>From the checked tables of cations to the rules.</summary>
internal static class CationBuilding
{
    public static CationRules Build(TableFolder folder) => new(
        [.. folder.RowsOf(RowKinds.CationWeights).Select(Weights)],
        [.. folder.RowsOf(RowKinds.CationBuffers).Select(Buffer)],
        Limits(folder.RowsOf(RowKinds.CationLimits).ToDictionary(row => row.Needed("limit"), row => new Cited<decimal>(row.NeededNumber("value"), row.Citation()), StringComparer.Ordinal)),
        [.. folder.RowsOf(RowKinds.ReferenceSaturations).Select(Reference)],
        [.. folder.RowsOf(RowKinds.RatioTrials).Select(row => new RatioTrial(row.Needed("id"), row.Needed("text"), row.Citation()))]);

    private static MilliequivalentWeights Weights(TableRow row) => new(
        row.Needed("id"),
        row.Needed("title"),
        Words.Units.Read(row.Needed("unit")).Value,
        row.NeededNumber("ca"),
        row.NeededNumber("mg"),
        row.NeededNumber("k"),
        row.NeededNumber("na"),
        row.Citation());

    private static BufferAcidityRule Buffer(TableRow row) => new(
        Words.ProceduresOf(Analyte.BufferPh)!.Read(row.Needed("buffer")).Value,
        row.NeededNumber("per_unit"),
        row.NeededNumber("start_ph"),
        row.Needed("unit"),
        row.Citation());

    private static CationLimits Limits(Dictionary<string, Cited<decimal>> limits) => new(
        limits["highest-ph"],
        limits["no-acidity-from-ph"],
        limits["saline-saturated-paste"],
        limits["saline-1-1"],
        limits["saline-1-2"],
        limits["low-calcium"],
        limits["low-magnesium"],
        limits["magnesium-to-calcium"]);

    private static ReferenceSaturation Reference(TableRow row) => new(
        Words.Extractants.Read(row.Needed("extractant")).Value,
        Words.Analytes.Read(row.Needed("cation")).Value,
        row.NeededNumber("low"),
        row.NeededNumber("high"),
        row.Citation());
}
