using Microsoft.Net.Http.Headers;

namespace SoilAdvisor.Api.Http;

/// <summary>Chooses the media type of an answer by the Accept header and its q-values.</summary>
internal static class MediaChoice
{
    /// <summary>The best of the offered types; null when none is accepted. The first offered is given where nothing decides.</summary>
    public static string? Of(HttpRequest request, IReadOnlyList<string> offered)
    {
        var accepted = request.GetTypedHeaders().Accept;
        if (accepted.Count == 0)
        {
            return request.Headers.Accept.Count == 0 ? offered[0] : null;
        }

        return offered
            .Select((type, order) => (type, order, quality: QualityOf(MediaTypeHeaderValue.Parse(type), accepted)))
            .Where(c => c.quality > 0)
            .OrderByDescending(c => c.quality)
            .ThenBy(c => c.order)
            .Select(c => c.type)
            .FirstOrDefault();
    }

    // The most specific range that holds the type gives its quality (RFC 9110, section 12.5.1).
    private static double QualityOf(MediaTypeHeaderValue type, IList<MediaTypeHeaderValue> accepted) => accepted
        .Where(range => type.MediaType.Equals(range.MediaType, StringComparison.OrdinalIgnoreCase) || range.MatchesAllTypes || (range.MatchesAllSubTypes && range.Type.Equals(type.Type, StringComparison.OrdinalIgnoreCase)))
        .OrderBy(range => range.MatchesAllTypes ? 2 : range.MatchesAllSubTypes ? 1 : 0)
        .Select(range => range.Quality ?? 1)
        .FirstOrDefault();
}
