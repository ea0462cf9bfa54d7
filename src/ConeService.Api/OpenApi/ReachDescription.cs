using System.Text.Json.Nodes;
using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace ConeService.Api.OpenApi;

/// <summary>Says in the document what holds for many operations: the pin to a data package, and that a POST may be repeated.</summary>
internal static class ReachDescription
{
    private const string RetryHarmless = "x-retry-harmless";

    public static Task Describe(OpenApiOperation operation, OpenApiOperationTransformerContext context, CancellationToken cancel)
    {
        var isRead = HttpMethods.IsGet(context.Description.HttpMethod ?? "");
        // Any read may be asked for in a form by a suffix, and browsers get problems as pages.
        if (isRead && operation.Responses is { } told && told.Count > 0 && !told.ContainsKey("406"))
        {
            if (told.FirstOrDefault(r => r.Key.StartsWith('4')).Value is { } like)
            {
                told["406"] = new OpenApiResponse
                {
                    Description = "Not Acceptable",
                    Content = new Dictionary<string, OpenApiMediaType>(like.Content!),
                };
            }
        }

        foreach (var problem in isRead ? operation.Responses?.Values.Select(r => r.Content) ?? [] : [])
        {
            if (problem?.ContainsKey(ProblemWriter.MediaType) != true) continue;
            problem[HtmlPage.MediaType] = new() { Schema = new OpenApiSchema { Type = JsonSchemaType.String } };
        }

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
