namespace SoilAdvisor.Api.Http;

/// <summary>Dates as ISO 8601 writes them.</summary>
internal static class Dates
{
    /// <summary>A date from 2026-03-31; null for anything else.</summary>
    public static DateOnly? Read(string? text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date : null;

    /// <summary>As 2026-03-31.</summary>
    public static string Write(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
