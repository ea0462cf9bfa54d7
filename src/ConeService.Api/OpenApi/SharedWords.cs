using System.Text.Json.Nodes;
using ConeService.Data;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace ConeService.Api.OpenApi;

/// <summary>
/// Gives the closed lists of words that several members take theirs from a name of their own, so that a client made of the document
/// has one type for each and not a numbered one for every member.
/// </summary>
internal static class SharedWords
{
    private static readonly (string Name, string Description, string[] Words)[] Lists =
    [
        ("TemperatureUnit", "C or F.", ["C", "F"]),
        ("FiringAtmosphere", "What a firing gives the ware to breathe.", [.. Atmospheres.OfFirings.Select(EnumWords.Word)]),
        ("ColourAtmosphere", "What is about the glaze while its colour is made.", [.. Atmospheres.OfColours.Select(EnumWords.Word)]),
        ("NoteAtmosphere", "The atmosphere that a source tells a colour of; any where it names none.",
            [.. Atmospheres.OfColourNotes.Select(EnumWords.Word)]),
        ("PieceUse", "What a piece is meant for.", ["food", "decorative"]),
    ];

    /// <summary>The transformer.</summary>
    public static Task Describe(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancel)
    {
        var schemas = document.Components!.Schemas!;
        var known = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (name, schema) in schemas)
        {
            if (schema is OpenApiSchema { Enum: { } words }) known[Key(words)] = name;
        }

        foreach (var (name, description, words) in Lists)
        {
            known[string.Join('|', words)] = name;
            schemas[name] = new OpenApiSchema
            {
                Type = JsonSchemaType.String,
                Description = description,
                Enum = [.. words.Select(w => (JsonNode)JsonValue.Create(w))],
            };
        }

        foreach (var schema in schemas.Values.OfType<OpenApiSchema>().Where(s => s.Properties is not null))
        {
            foreach (var (member, own) in schema.Properties!.ToList()) schema.Properties![member] = Named(own, known, document);
        }

        return Task.CompletedTask;
    }

    private static IOpenApiSchema Named(IOpenApiSchema schema, Dictionary<string, string> known, OpenApiDocument document)
    {
        if (schema is not OpenApiSchema own) return schema;
        if (own.Enum is { } words)
            return known.TryGetValue(Key(words), out var name)
                ? new OpenApiSchemaReference(name, document) { Description = own.Description, Default = own.Default }
                : own;
        if (own.Items is { } items) own.Items = Named(items, known, document);
        if (own.OneOf is { } options) own.OneOf = [.. options.Select(o => Named(o, known, document))];
        return own;
    }

    private static string Key(IEnumerable<JsonNode> words) => string.Join('|', words.Select(w => w.GetValue<string>()));
}
