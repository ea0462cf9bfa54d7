using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using ConeService.Contract.Json;
using ConeService.Contract.Problems;
using ConeService.Contract.Requests;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace ConeService.Api.OpenApi;

/// <summary>
/// Says in the document what requests must be, from what is declared beside the members of the contract: requests are closed and
/// name what they need; answers are open, so that a member may join them.
/// </summary>
internal static class RequestSchemas
{
    /// <summary>The transformer.</summary>
    public static Task Describe(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancel)
    {
        var schemas = document.Components!.Schemas!;
        var requests = new HashSet<Type>();
        foreach (var root in Roots(context)) Collect(root, requests);
        foreach (var (name, schema) in schemas)
        {
            if (schema is not OpenApiSchema own) continue;
            if (requests.FirstOrDefault(r => SchemaName(r) == name) is { } type) Close(own, type);
            else own.AdditionalPropertiesAllowed = true;
        }

        // The raw form of a member is the service's own affair.
        schemas.Remove(nameof(Contract.Answers.SentText));
        var operations = document.Paths.Values.SelectMany(p => p.Operations!.Values);
        foreach (var body in operations.Select(o => o.RequestBody).OfType<OpenApiRequestBody>())
        {
            body.Description = body.Content![Http.JsonBody.MediaType].Schema is OpenApiSchemaReference { Reference.Id: { } id }
                ? schemas[id].Description
                : null;
        }

        // What a tool should show to people of an error.
        ((OpenApiSchema)((OpenApiSchema)schemas[nameof(Problem)]).Properties!["detail"]).Extensions =
            new Dictionary<string, IOpenApiExtension> { ["x-ms-primary-error-message"] = new JsonNodeExtension(true) };
        return Task.CompletedTask;
    }

    /// <summary>Name of the schema of a record.</summary>
    private static string SchemaName(Type type) =>
        OpenApiOptions.CreateDefaultSchemaReferenceId(ConeJson.Options.GetTypeInfo(type)) ?? type.Name;

    private static IEnumerable<Type> Roots(OpenApiDocumentTransformerContext context) => context.DescriptionGroups
        .SelectMany(g => g.Items)
        .SelectMany(i => i.ActionDescriptor.EndpointMetadata.OfType<IAcceptsMetadata>())
        .Select(a => a.RequestType).OfType<Type>().Distinct();

    private static void Collect(Type type, HashSet<Type> found)
    {
        if (ConeJson.Options.GetTypeInfo(type) is not { Kind: JsonTypeInfoKind.Object } info || !found.Add(type)) return;
        foreach (var member in info.Properties) Collect(Element(member.PropertyType) ?? member.PropertyType, found);
    }

    private static Type? Element(Type type) =>
        type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>) ? type.GetGenericArguments()[0] : null;

    private static void Close(OpenApiSchema schema, Type type)
    {
        var needed = Needs(type);
        schema.AdditionalPropertiesAllowed = false;
        schema.Required = needed.Count > 0 ? new SortedSet<string>(needed, StringComparer.Ordinal) : null;
        var members = ConeJson.Options.GetTypeInfo(type).Properties;
        foreach (var member in members)
        {
            var now = schema.Properties![member.Name];
            // Read first: what a reference is told of is moved to the member.
            var text = MemberSchema.CallerWords(now.Description ?? Nested(now)?.Description, members);
            var described = MemberSchema.Of(now, member, Element(member.PropertyType), needed.Contains(member.Name));
            described.Description = text;
            schema.Properties[member.Name] = described;
        }
    }

    private static IOpenApiSchema? Nested(IOpenApiSchema schema) => schema.OneOf?.FirstOrDefault(o => o.Description is not null);

    private static HashSet<string> Needs(MemberInfo member) =>
        [.. (member.GetCustomAttribute<NeedsAttribute>()?.Members ?? []).Select(JsonNamingPolicy.CamelCase.ConvertName)];
}
