using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Planning;

namespace SoilAdvisor.Api.Plans;

/// <summary>Turns the limits of a farm, which the validator has judged, into types.</summary>
internal static class FarmLimitsReader
{
    public static FarmLimits Read(WrittenFarmLimits? written, string pointer, FaultList faults) => written is null
        ? FarmLimits.None
        : new FarmLimits(
            (int?)written.ProductsPerBed?.Number,
            (int?)written.Products?.Number,
            UnitWords.ReadRate(written.SmallestRate, PointerPath.Down(pointer, "smallestRate"), faults),
            MaterialReader.ReadMoney(written.LabourPerPass),
            MaterialReader.ReadMoney(written.Budget),
            (int?)written.Seconds?.Number ?? FarmLimits.UsualSeconds)
        {
            Ceilings = CeilingReader.Read(written.Ceilings, PointerPath.Down(pointer, "ceilings"), faults),
            ExcessPenalty = MaterialReader.ReadMoney(written.ExcessPenalty),
        };
}
