using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.SoilTests;

/// <summary>Writes a soil test in the permanent ids, with the digits that the laboratory printed.</summary>
internal static class SoilTestWriter
{
    /// <summary>The test as read; what is only echoed comes from the test as written.</summary>
    public static WrittenSoilTest Write(SoilTest test, WrittenSoilTest written, IReadOnlyList<WrittenLabRecommendation>? recommendations) => written with
    {
        Id = test.Id,
        Texture = test.SoilGroup is { } group ? Words.SoilGroups.IdOf(group) : null,
        Timing = test.Timing is { } timing ? Words.Timings.IdOf(timing) : null,
        Readings = [.. test.Readings.Select(Write)],
        LabRecommendations = recommendations is { Count: > 0 } ? recommendations : null,
    };

    private static WrittenReading Write(Reading reading) => new()
    {
        Analyte = Words.Analytes.IdOf(reading.Analyte),
        Value = WrittenNumber.Of(reading.Amount.Number),
        Comparator = ComparatorOf(reading.Amount),
        Unit = Words.Units.IdOf(reading.Unit),
        Extractant = reading.Method.Extractant is { } extractant ? Words.Extractants.IdOf(extractant) : null,
        Detection = reading.Method.Detection is { } detection ? Words.Detections.IdOf(detection) : null,
        Basis = reading.Method.Basis == Basis.Oxide ? Words.Bases.IdOf(Basis.Oxide) : null,
        Method = reading.Method.Procedure is { } procedure ? Words.ProceduresOf(reading.Analyte)?.IdOf(procedure) : null,
    };

    /// <summary>"&lt;" or "&gt;"; null for a plain number.</summary>
    public static string? ComparatorOf(Amount amount) => amount.Kind switch
    {
        AmountKind.Below => "<",
        AmountKind.Above => ">",
        _ => null,
    };
}
