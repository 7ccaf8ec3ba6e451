using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;
using UnitsNet;

namespace SoilAdvisor.Api.FieldWork;

/// <summary>Turns measures, which the validator has judged, into types.</summary>
internal static class MeasuresReader
{
    public static FieldMeasures Read(WrittenMeasures? written, string pointer, FaultList faults)
    {
        var bucket = UnitWords.ReadVolume(written?.Bucket, PointerPath.Down(pointer, "bucket"), faults);
        Volume? scoop = UnitWords.ReadVolume(written?.Scoop, PointerPath.Down(pointer, "scoop"), faults);
        if (scoop is { } small && small > (bucket ?? Volume.FromUsGallons(5)))
        {
            faults.Add(PointerPath.Down(pointer, "scoop"), "scoop-above-bucket", "The scoop holds more than the bucket.", "Check both measures and their units.");
        }

        return FieldMeasures.Of(
            bucket,
            scoop,
            UnitWords.ReadMass(written?.ScaleStep, PointerPath.Down(pointer, "scaleStep"), faults),
            UnitWords.ReadLength(written?.Strip, PointerPath.Down(pointer, "strip"), faults),
            UnitWords.ReadLength(written?.Swath, PointerPath.Down(pointer, "swath"), faults));
    }
}
