using Microsoft.OpenApi;
using SoilAdvisor.Api.Http;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace SoilAdvisor.Api.Contract;

/// <summary>Describes ?working, ?strict, ?units and ?answers on every calculation.</summary>
internal sealed class OptionsOfCalculations : IOperationFilter
{
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        if (!context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<TakesOptions>().Any())
        {
            return;
        }

        operation.Parameters ??= [];
        operation.Parameters.Add(Option("working", "true adds the arithmetic line by line", "false", "true"));
        operation.Parameters.Add(Option("strict", "true turns any refusal into 422", "false", "true"));
        operation.Parameters.Add(Option("answers", "hidden gives a work sheet in place of the answer: the steps with blanks, as JSON, text/html or text/markdown", "shown", "hidden"));
        operation.Parameters.Add(Option("units", "us gives lb/acre, lb and sq ft; metric gives kg/ha, kg and m2", "us", "metric"));
    }

    private static OpenApiParameter Option(string name, string meaning, params string[] values) => new()
    {
        Name = name,
        In = ParameterLocation.Query,
        Description = $"{meaning}; {values[0]} when left out.",
        Schema = new OpenApiSchema { Type = JsonSchemaType.String, Enum = [.. values.Select(v => (System.Text.Json.Nodes.JsonNode)v)] },
    };
}
