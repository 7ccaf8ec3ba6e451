using System.Globalization;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>What two soil tests of one block have in common: laboratory, method, season, depth.</summary>
internal static class TwoTests
{
    /// <summary>Days within which two samples count as of one season. Ours: half of a quarter of the year.</summary>
    public const int DaysOfOneSeason = 45;

    private const int DaysInYear = 365;

    private const double SameDepthCentimeters = 0.5;

    /// <summary>True for the same name; null where either is not stated.</summary>
    public static bool? SameLab(SoilTest first, SoilTest second) =>
        string.IsNullOrWhiteSpace(first.Lab) || string.IsNullOrWhiteSpace(second.Lab)
            ? null
            : string.Equals(first.Lab.Trim(), second.Lab.Trim(), StringComparison.OrdinalIgnoreCase);

    /// <summary>True for layers that agree to half a centimetre; null where either is not stated.</summary>
    public static bool? SameDepth(SoilTest first, SoilTest second) => first.Depth is { } a && second.Depth is { } b
        ? Math.Abs(a.From.Centimeters - b.From.Centimeters) < SameDepthCentimeters && Math.Abs(a.To.Centimeters - b.To.Centimeters) < SameDepthCentimeters
        : null;

    /// <summary>True for samples of one season of one year; null where either day is not stated.</summary>
    public static bool? SameTime(SoilTest first, SoilTest second) =>
        first.Sampled is { } a && second.Sampled is { } b ? Math.Abs(a.DayNumber - b.DayNumber) <= DaysOfOneSeason : null;

    /// <summary>True for samples of one time of year, whatever the year; null where either day is not stated.</summary>
    public static bool? SameSeason(SoilTest first, SoilTest second)
    {
        if (first.Sampled is not { } a || second.Sampled is not { } b)
        {
            return null;
        }

        var apart = Math.Abs(a.DayNumber - b.DayNumber) % DaysInYear;
        return Math.Min(apart, DaysInYear - apart) <= DaysOfOneSeason;
    }

    /// <summary>The layer in words.</summary>
    public static string Depth(SoilTest test) => test.Depth is { } depth
        ? string.Create(CultureInfo.InvariantCulture, $"{depth.From.Inches:0.#} to {depth.To.Inches:0.#} in")
        : "not stated";

    /// <summary>The day in words.</summary>
    public static string Day(SoilTest test) => test.Sampled is { } day ? PlainNumber.Date(day) : "not stated";

    /// <summary>The method in words.</summary>
    public static string Method(Reading reading)
    {
        var (method, parts) = (reading.Method, new List<string>(3));
        if (method.Extractant is { } extractant)
        {
            parts.Add(Words.Extractants.IdOf(extractant));
        }

        if (method.Detection is { } detection)
        {
            parts.Add(Words.Detections.IdOf(detection));
        }

        if (method.Procedure is { } procedure)
        {
            parts.Add(Words.ProceduresOf(reading.Analyte)!.IdOf(procedure));
        }

        return parts.Count == 0 ? "not stated" : string.Join(", ", parts);
    }

    /// <summary>True for the same extractant, detection and procedure. The basis is arithmetic and does not count.</summary>
    public static bool SameMethod(Reading first, Reading second) =>
        (first.Method.Extractant, first.Method.Detection, first.Method.Procedure) == (second.Method.Extractant, second.Method.Detection, second.Method.Procedure);
}
