using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.ReferenceTables.Crops;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;
using UnitsNet;

namespace SoilAdvisor.ReferenceTables.Acidity;

/// <summary>From a checked folder to the lime method.</summary>
internal static class LimeMethodBuilding
{
    public static LimeMethod Build(Document<LimeMethodDocument> document, TableFolder folder)
    {
        var method = document.Value;
        return new LimeMethod(
            method.Id,
            method.Title,
            method.Institution,
            [.. method.Region],
            LimeWords.Reads.Read(method.Reads).Value,
            [.. method.Buffers.Select(b => Words.ProceduresOf(Analyte.BufferPh)!.Read(b).Value)],
            LimeWords.Kinds.Read(method.Kind).Value,
            method.Formula,
            method.Unit,
            LimeBasis.Read(method.Basis).Value,
            method.Depth.Unit == "in" ? Length.FromInches((double)method.Depth.Value) : Length.FromCentimeters((double)method.Depth.Value),
            [.. method.Targets ?? []],
            new LimeLimits(LimeWords.Soils.Read(method.Soil ?? "any").Value, method.PhFrom, method.PhTo, method.BufferFrom, method.BufferTo),
            method.Interpolate,
            [.. folder.RowsIn(document.Folder, RowKinds.LimeParameters).Select(RateTableBuilding.Parameter)],
            [.. folder.RowsIn(document.Folder, RowKinds.LimeCells).Select(Cell)],
            method.Citation(),
            method.Notes)
        {
            Equations = [.. folder.RowsIn(document.Folder, RowKinds.LimeEquations).Select(Equation)],
            Rows = LimeWords.Rows.Read(method.Rows ?? "points").Value,
            SaltScale = method.SaltScale is { } scale ? Words.ProceduresOf(Analyte.Ph)!.Read(scale).Value : null,
        };
    }

    private static LimeCell Cell(TableRow row) => new(
        row.Number("buffer_ph"),
        row.Number("acidity"),
        row.Number("soil_ph"),
        [.. row.Parts("soil_group").Select(word => Words.SoilGroups.Read(word).Value)],
        row.Number("target_ph"),
        row.NeededNumber("rate"),
        row.Citation());

    private static LimeTargetEquation Equation(TableRow row) => new(
        row.NeededNumber("target_ph"),
        row.NeededNumber("constant"),
        row.NeededNumber("per_buffer"),
        row.NeededNumber("per_buffer_square"),
        row.NeededNumber("per_ph"),
        row.Citation());
}
