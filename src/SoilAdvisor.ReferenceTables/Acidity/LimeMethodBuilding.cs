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
            Words.ProceduresOf(Analyte.BufferPh)!.Read(method.Buffer).Value,
            method.Kind == LimeMethodDocument.Equation ? LimeMethodKind.Equation : LimeMethodKind.Table,
            method.Formula,
            method.Unit,
            LimeBasis.Read(method.Basis).Value,
            method.Depth.Unit == "in" ? Length.FromInches((double)method.Depth.Value) : Length.FromCentimeters((double)method.Depth.Value),
            [.. method.Targets ?? []],
            method.BufferFrom,
            method.BufferTo,
            method.Interpolate,
            [.. folder.RowsIn(document.Folder, RowKinds.LimeParameters).Select(RateTableBuilding.Parameter)],
            [.. folder.RowsIn(document.Folder, RowKinds.LimeCells).Select(row => new LimeCell(row.NeededNumber("buffer_ph"), row.NeededNumber("target_ph"), row.NeededNumber("rate"), row.Citation()))],
            method.Citation(),
            method.Notes);
    }
}
