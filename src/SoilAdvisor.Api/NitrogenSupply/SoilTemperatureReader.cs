using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.NitrogenSupply;

/// <summary>Soil temperatures, from words to types.</summary>
internal static class SoilTemperatureReader
{
    /// <summary>The temperatures; null when none were given or after a refusal.</summary>
    public static SoilTemperatures? Read(WrittenSoilTemperature? written, string pointer, FaultList faults)
    {
        if (written is null || faults.AnyWithin(pointer))
        {
            return null;
        }

        var celsius = written.Monthly!.Select(n => written.Unit == "F" ? (n.Number!.Value - 32) * 5 / 9 : n.Number!.Value).ToList();
        if (SoilTemperatures.Of(celsius).TryGet(out var soil, out var why))
        {
            return soil;
        }

        faults.Add(PointerPath.Down(pointer, "monthly"), why);
        return null;
    }
}
