using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using ConeService.Api.Features.Embedding;
using ConeService.Api.Http;
using ConeService.Api.Http.Reach;
using ConeService.Contract.Answers;
using ConeService.Contract.Texts;
using ConeService.Data;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace ConeService.Api.OpenApi;

/// <summary>Makes the OpenAPI document and the page that shows it.</summary>
internal static partial class DocumentSetup
{
    private const string TwinDescription = "The same in degrees Fahrenheit.";

    public static void AddConeServiceDocument(this IServiceCollection services) => services.AddOpenApi(PublishedDocument.Name, options =>
    {
        options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1;
        options.AddDocumentTransformer(DescribeDocument);
        options.AddOperationTransformer(DescribeTextBodies);
        options.AddOperationTransformer(ReachDescription.Describe);
        // A message or an address is text wherever it stands; which atmospheres there may be depends on where the word stands.
        options.CreateSchemaReferenceId = type => IsText(type.Type) || IsAtmosphere(type.Type)
            ? null : OpenApiOptions.CreateDefaultSchemaReferenceId(type);
        options.AddSchemaTransformer(DescribeMessage);
        options.AddSchemaTransformer(DescribeEnum);
        options.AddSchemaTransformer(DescribeWords);
        options.AddDocumentTransformer(UnwrapDescriptions);
        options.AddDocumentTransformer(RequestSchemas.Describe);
        options.AddDocumentTransformer(SharedWords.Describe);
        options.AddDocumentTransformer(RequestExamples.Describe);
    });

    public static void MapDocument(this WebApplication app)
    {
        // Its middleware matches the path of every request by regular expressions: only /docs pays for that.
        app.UseWhen(
            context => context.Request.Path.StartsWithSegments("/docs", StringComparison.OrdinalIgnoreCase),
            docs => docs.UseSwaggerUI(ui =>
            {
                ui.RoutePrefix = "docs";
                // From the page, so that it is found behind a path prefix too.
                ui.SwaggerEndpoint(".." + Links.Document, "ConeService v1");
                ui.DocumentTitle = "ConeService: all addresses";
                ui.InjectStylesheet(EmbeddingEndpoints.Style);
            }));
    }

    private static Task DescribeDocument(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancel)
    {
        document.Info = new()
        {
            Title = "ConeService",
            Version = "1.0.0",
            Description = "Cone equivalents at any heating rate from published charts; every value names its source, its confidence and "
                + "what it rests on. A cone is always text: 06 and 6 are more than two hundred degrees apart.",
            Contact = new() { Name = "ConeService contributors" },
            License = new() { Name = "MIT", Identifier = "MIT" },
        };
        // Unless it is configured, the service does not know under which name it is reached.
        var prefix = context.ApplicationServices.GetRequiredService<ServiceAddress>().ConfiguredPrefix;
        document.Servers = [new() { Url = prefix + "/", Description = "This service" }];
        document.Tags = new HashSet<OpenApiTag>(Tags.All.Select(t => new OpenApiTag { Name = t.Name, Description = t.Description }));
        // HEAD answers wherever GET does; saying so once is enough.
        foreach (var path in document.Paths.Values) path.Operations?.Remove(HttpMethod.Head);
        // Nobody has to say who he is. Said of each operation: an empty list for the whole document is not written.
        foreach (var operation in document.Paths.Values.SelectMany(p => p.Operations?.Values.AsEnumerable() ?? [])) operation.Security = [];
        return Task.CompletedTask;
    }

    // One .NET type stands for all representations of an answer; what is not JSON is text to a client.
    private static Task DescribeTextBodies(OpenApiOperation operation, OpenApiOperationTransformerContext context, CancellationToken cancel)
    {
        var bodies = (operation.Responses?.Values.Select(r => r.Content) ?? []).Append(operation.RequestBody?.Content);
        foreach (var (type, media) in bodies.OfType<IDictionary<string, OpenApiMediaType>>().SelectMany(c => c))
        {
            if (!type.EndsWith("json", StringComparison.Ordinal)) media.Schema = new OpenApiSchema { Type = JsonSchemaType.String };
        }

        return Task.CompletedTask;
    }

    private static bool IsText(Type type) => type == typeof(Message) || type == typeof(Address);

    private static bool IsAtmosphere(Type type) => (Nullable.GetUnderlyingType(type) ?? type) == typeof(Atmosphere);

    private static Task DescribeEnum(OpenApiSchema schema, OpenApiSchemaTransformerContext context, CancellationToken cancel)
    {
        var type = Nullable.GetUnderlyingType(context.JsonTypeInfo.Type) ?? context.JsonTypeInfo.Type;
        if (type.IsEnum)
        {
            schema.Type = JsonSchemaType.String;
            // A vocabulary has no null: where one may stand, the member says so, and said twice it would match two branches of a oneOf.
            schema.Enum = [.. Enum.GetNames(type).Select(n => JsonValue.Create(JsonNamingPolicy.KebabCaseLower.ConvertName(n)))];
        }

        if (context.JsonPropertyInfo?.AttributeProvider?.GetCustomAttributes(typeof(AtmosphereWordsAttribute), false) is
            [AtmosphereWordsAttribute words])
        {
            List<JsonNode> named = [.. Atmospheres.Of(words.Use).Select(a => JsonValue.Create(EnumWords.Word(a)))];
            if (context.JsonTypeInfo.Type == typeof(Atmosphere?))
            {
                (schema.Type, schema.Enum) = (null, null);
                schema.OneOf =
                    [new OpenApiSchema { Type = JsonSchemaType.Null }, new OpenApiSchema { Type = JsonSchemaType.String, Enum = named }];
            }
            else
            {
                (schema.Items as OpenApiSchema ?? schema).Enum = named;
            }
        }

        return Task.CompletedTask;
    }

    // A list of words that is read raw, as sent, has a converter of its own, behind which the generator sees no items.
    private static Task DescribeWords(OpenApiSchema schema, OpenApiSchemaTransformerContext context, CancellationToken cancel)
    {
        if (schema.Type?.HasFlag(JsonSchemaType.Array) == true) schema.Items ??= new OpenApiSchema { Type = JsonSchemaType.String };
        return Task.CompletedTask;
    }

    // A comment is wrapped to the width of a source line; in the document its text is one paragraph.
    private static Task UnwrapDescriptions(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancel)
    {
        foreach (var schema in document.Components?.Schemas?.Values ?? [])
        {
            Unwrap(schema);
            DescribeTwins(schema);
        }

        foreach (var operation in document.Paths.Values.SelectMany(p => p.Operations?.Values.AsEnumerable() ?? []))
        {
            if (operation.Description is { } text) operation.Description = WrappedLine().Replace(text, " ");
            foreach (var parameter in (operation.Parameters ?? []).OfType<OpenApiParameter>())
            {
                if (parameter.Description is { } about) parameter.Description = WrappedLine().Replace(about, " ");
            }
        }

        return Task.CompletedTask;
    }

    // What an answer says twice, in °C and in °F, is described once.
    private static void DescribeTwins(IOpenApiSchema schema)
    {
        foreach (var (name, property) in schema.Properties ?? new Dictionary<string, IOpenApiSchema>())
        {
            if (!name.Contains("ahrenheit", StringComparison.Ordinal) || property.Description is not null) continue;
            if (property is OpenApiSchema twin) twin.Description = TwinDescription;
        }
    }

    private static void Unwrap(IOpenApiSchema schema)
    {
        // A reference shows the text of what it leads to; set on the reference, it would be written twice.
        if (schema.Description is { } text && text.Contains('\n', StringComparison.Ordinal))
            schema.Description = WrappedLine().Replace(text, " ");
        // What a reference leads to stands among the components itself.
        if (schema is not OpenApiSchema own) return;
        IEnumerable<IOpenApiSchema> parts = [.. own.Properties?.Values ?? [], .. own.OneOf ?? [], .. own.AnyOf ?? [], .. own.AllOf ?? []];
        foreach (var part in parts) Unwrap(part);
        if (own.Items is { } items) Unwrap(items);
    }

    private static Task DescribeMessage(OpenApiSchema schema, OpenApiSchemaTransformerContext context, CancellationToken cancel)
    {
        if (IsText(context.JsonTypeInfo.Type))
            schema.Type = JsonSchemaType.String | (context.JsonPropertyInfo?.IsGetNullable == true ? JsonSchemaType.Null : 0);
        return Task.CompletedTask;
    }

    [GeneratedRegex(@"\s*\n\s*")]
    private static partial Regex WrappedLine();
}
