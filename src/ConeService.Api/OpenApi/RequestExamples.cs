using System.Text.Json.Nodes;
using ConeService.Api.Http;
using ConeService.Data;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace ConeService.Api.OpenApi;

/// <summary>
/// Puts the examples of the folder Examples into the document: a minimal and a full body of each operation that takes one, and the
/// parameters of all. Every one of them is asked by a test.
/// </summary>
internal static class RequestExamples
{
    private static readonly (string Name, string Summary)[] Bodies =
        [("minimal", "The least that is answered."), ("full", "With what else may be said.")];

    /// <summary>The transformer.</summary>
    public static Task Describe(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancel)
    {
        var parameters = Read("parameters.json")!.AsObject();
        // Read and checked once: it takes a quarter of a second, and every operation has the parameter.
        var pin = DatasetLoader.LoadEmbedded().VersionId;
        foreach (var operation in document.Paths.Values.SelectMany(p => p.Operations!.Values))
        {
            foreach (var parameter in (operation.Parameters ?? []).OfType<OpenApiParameter>())
            {
                // The pin of this build's own package: any other is answered 409.
                parameter.Example = parameter.Name == PinnedDataset.Parameter
                    ? JsonValue.Create(pin)
                    : parameters[operation.OperationId!]?[parameter.Name!]?.DeepClone();
            }

            if (operation.RequestBody?.Content is not { } content) continue;
            content[JsonBody.MediaType].Examples = Bodies.ToDictionary(
                b => b.Name,
                IOpenApiExample (b) => new OpenApiExample { Summary = b.Summary, Value = Read($"{operation.OperationId}.{b.Name}.json") });
            if (content.TryGetValue(Csv.MediaType, out var csv)) csv.Example = JsonValue.Create(Text($"{operation.OperationId}.csv"));
        }

        return Task.CompletedTask;
    }

    private static JsonNode? Read(string name) => JsonNode.Parse(Text(name));

    private static string Text(string name)
    {
        using var stream = typeof(RequestExamples).Assembly.GetManifestResourceStream("Examples." + name)
            ?? throw new InvalidOperationException($"There is no example {name}.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
