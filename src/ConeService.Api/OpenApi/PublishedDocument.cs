using System.Text;
using System.Text.Json;
using ConeService.Api.Http;
using ConeService.Contract.Texts;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace ConeService.Api.OpenApi;

/// <summary>The OpenAPI document as it is served: made once, as no answer to a caller changes it.</summary>
/// <param name="documents">Makes the document.</param>
internal sealed class PublishedDocument([FromKeyedServices(PublishedDocument.Name)] IOpenApiDocumentProvider documents)
{
    /// <summary>Name of the document.</summary>
    public const string Name = "v1";

    private readonly Lazy<Task<Made>> made = new(() => Make(documents));

    /// <summary>The document as JSON.</summary>
    public async Task<PreparedBody> Body() => (await made.Value).Body;

    /// <summary>The document to read in; parsed when it is first asked for.</summary>
    public async Task<JsonElement> Root() => (await made.Value).Parsed.Value.RootElement;

    /// <summary>What each operation answers in a few words, by its name.</summary>
    public async Task<IReadOnlyDictionary<string, string>> Summaries() => (await made.Value).Summaries;

    private static async Task<Made> Make(IOpenApiDocumentProvider documents)
    {
        // Its texts are English, whoever asks first; what is said here ends with this method.
        Speech.Use(new(MessageBook.Embedded));
        var document = await documents.GetOpenApiDocumentAsync();
        var text = Encoding.UTF8.GetBytes(await document.SerializeAsJsonAsync(OpenApiSpecVersion.OpenApi3_1));
        return new(
            new(() => JsonDocument.Parse(text)),
            new PreparedBody(text, JsonBody.MediaType + "; charset=utf-8").Keep(),
            document.Paths.Values.SelectMany(p => p.Operations?.Values.AsEnumerable() ?? [])
                .Where(o => o.OperationId is not null)
                .ToDictionary(o => o.OperationId!, o => o.Summary ?? o.OperationId!, StringComparer.Ordinal));
    }

    private sealed record Made(Lazy<JsonDocument> Parsed, PreparedBody Body, IReadOnlyDictionary<string, string> Summaries);
}
