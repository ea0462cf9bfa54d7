using ConeService.Firing.Answers;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace ConeService.Api.OpenApi;

/// <summary>Makes the OpenAPI document and the page that shows it.</summary>
internal static class DocumentSetup
{
    public static void AddConeServiceDocument(this IServiceCollection services) => services.AddOpenApi("v1", options =>
    {
        options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1;
        options.AddDocumentTransformer(DescribeDocument);
        options.AddSchemaTransformer(DescribeSentText);
    });

    public static void MapDocument(this WebApplication app)
    {
        app.MapOpenApi("/openapi/{documentName}.json");
        app.UseSwaggerUI(ui =>
        {
            ui.RoutePrefix = "docs";
            ui.SwaggerEndpoint("/openapi/v1.json", "ConeService v1");
            ui.DocumentTitle = "ConeService: all addresses";
        });
    }

    private static Task DescribeDocument(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancel)
    {
        document.Info = new()
        {
            Title = "ConeService",
            Version = "1.0.0",
            Description = "Cone equivalents at any heating rate from published charts; every value names its source, its confidence and what it rests on. A cone is always text: 06 and 6 are more than two hundred degrees apart.",
            Contact = new() { Name = "ConeService contributors", Url = new("/", UriKind.Relative) },
            License = new() { Name = "MIT", Identifier = "MIT" },
        };
        // The service does not know under which name it is reached.
        document.Servers = [new() { Url = "/", Description = "This service" }];
        document.Tags = new HashSet<OpenApiTag>(Tags.All.Select(t => new OpenApiTag { Name = t.Name, Description = t.Description }));
        // HEAD answers wherever GET does; saying so once is enough.
        foreach (var path in document.Paths.Values) path.Operations?.Remove(HttpMethod.Head);
        return Task.CompletedTask;
    }


    private static Task DescribeSentText(OpenApiSchema schema, OpenApiSchemaTransformerContext context, CancellationToken cancel)
    {
        if (context.JsonTypeInfo.Type != typeof(SentText)) return Task.CompletedTask;
        var name = context.JsonPropertyInfo?.Name;
        if (name == "count" || name?.EndsWith("Millimetres", StringComparison.Ordinal) == true)
        {
            schema.Type = JsonSchemaType.Number | JsonSchemaType.Null;
            return Task.CompletedTask;
        }

        schema.Type = JsonSchemaType.String | JsonSchemaType.Null | (name is "temperature" or "rate" ? JsonSchemaType.Number : 0);
        return Task.CompletedTask;
    }
}
