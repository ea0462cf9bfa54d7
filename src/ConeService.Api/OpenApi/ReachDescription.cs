using System.Text.Json.Nodes;
using ConeService.Api.Http;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace ConeService.Api.OpenApi;

/// <summary>Says in the document what holds for many operations: the pin to a data package, and that a POST may be repeated.</summary>
internal static class ReachDescription
{
    private const string RetryHarmless = "x-retry-harmless";

    public static Task Describe(OpenApiOperation operation, OpenApiOperationTransformerContext context, CancellationToken cancel)
    {
        var endpoint = context.Description.ActionDescriptor.EndpointMetadata;
        if (endpoint.OfType<DataRoute>().Any())
        {
            operation.Parameters ??= [];
            operation.Parameters.Add(new OpenApiParameter
            {
                Name = PinnedDataset.Parameter,
                In = ParameterLocation.Query,
                Description = "Version of the data package that must answer, as datasetVersion tells it. Such an answer may be kept for "
                    + "ever; 409 where another version is served. Left out: the one served.",
                Schema = new OpenApiSchema { Type = JsonSchemaType.String },
            });
        }

        if (HttpMethods.IsPost(context.Description.HttpMethod ?? ""))
        {
            operation.Extensions ??= new Dictionary<string, IOpenApiExtension>();
            operation.Extensions[RetryHarmless] = new JsonNodeExtension(JsonValue.Create(true));
        }

        return Task.CompletedTask;
    }
}
