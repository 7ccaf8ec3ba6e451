using SoilAdvisor.Agronomy.YearsAhead;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Http;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api.YearsAhead;

/// <summary>Turns a dressing that the validator has judged into types; null when there is none, or after a refusal.</summary>
internal static class StructureReader
{
    public static StructureAsked? Read(WrittenStructure? written, string pointer, Tables tables, FaultList faults)
    {
        if (written is null || Named.Read(written.Material, PointerPath.Down(pointer, "material"), tables.Material, faults) is not { } material)
        {
            return null;
        }

        var rate = UnitWords.ReadRate(written.Rate, PointerPath.Down(pointer, "rate"), faults);
        var depth = UnitWords.ReadLength(written.Depth, PointerPath.Down(pointer, "depth"), faults);
        return rate is null && depth is null ? null : new StructureAsked(material.Id, rate, depth);
    }
}
