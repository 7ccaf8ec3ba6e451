namespace SoilAdvisor.Api.Http;

/// <summary>Marks an endpoint that takes ?working, ?strict and ?units, for the OpenAPI document.</summary>
internal sealed class TakesOptions;
