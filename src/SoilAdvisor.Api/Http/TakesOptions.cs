namespace SoilAdvisor.Api.Http;

/// <summary>Marks an endpoint that takes ?working, ?strict, ?units and ?answers, for the OpenAPI document.</summary>
internal sealed class TakesOptions;
