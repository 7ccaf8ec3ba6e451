namespace SoilAdvisor.Api.Http;

/// <summary>Headers that keep a browser from doing more with an answer than showing it.</summary>
internal static class SecurityHeaders
{
    public static void UseSecurityHeaders(this WebApplication app) => app.Use((context, next) =>
    {
        var headers = context.Response.Headers;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";

        // Pages are self-contained: their own style, nothing from elsewhere, no script.
        headers.ContentSecurityPolicy = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
        headers.CacheControl = "no-store";
        return next(context);
    });
}
