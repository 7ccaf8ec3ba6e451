namespace SoilAdvisor.Api.Http;

/// <summary>Dates as ISO 8601 writes them.</summary>
internal static class Dates
{
    // Wide enough for any record and any plan, narrow enough that counting days and years from it stays a date.
    private const int FirstYear = 1900;
    private const int LastYear = 2199;

    /// <summary>A date from 2026-03-31, in the years 1900 to 2199; null for anything else.</summary>
    public static DateOnly? Read(string? text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) && date.Year is >= FirstYear and <= LastYear ? date : null;

    /// <summary>As 2026-03-31.</summary>
    public static string Write(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
