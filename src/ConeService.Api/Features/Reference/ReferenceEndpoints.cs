using System.Text.Json;
using ConeService.Api.Http;
using ConeService.Api.Http.Reach;
using ConeService.Api.OpenApi;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Features.Reference;

/// <summary>The OpenAPI document as pages of our own: no script, to read on a phone, on paper and aloud, with examples to copy.</summary>
internal static class ReferenceEndpoints
{
    public static void MapReference(this IEndpointRouteBuilder routes)
    {
        routes.MapRead(Links.Reference, All).WithQuery()
            .WithName("getReference").WithSummary("Every operation, as pages without a script.")
            .Produces<string>(StatusCodes.Status200OK, HtmlPage.MediaType).ExcludeFromDescription();
        routes.MapRead(Links.Reference + "/{operation}", One).WithQuery()
            .WithName("getReferencePage").WithSummary("One operation, with examples to copy.")
            .Produces<string>(StatusCodes.Status200OK, HtmlPage.MediaType).ExcludeFromDescription();
    }

    private static async Task<IResult> All(PublishedDocument document, SnapshotHolder snapshots)
    {
        var root = await document.Root();
        return snapshots.Current.Prepare("reference", root, static (_, r) => ReferenceIndex.Render(r));
    }

    // Its examples name the host under which it was asked for, unless one is configured: so it is not kept.
    private static async Task<IResult> One(string operation, HttpContext context, PublishedDocument document, ServiceAddress address)
    {
        var root = await document.Root();
        var all = Operations(root).ToList();
        var found = all.Find(o => o.Id == operation);
        if (found is null)
        {
            var near = NearMatches.Find(operation, all.Select(o => o.Id));
            throw new RefusedException(new Finding(
                FindingCodes.NotFound, "operation", operation, Message.Of("answers.not-found", ("noun", "operation"), ("id", operation)),
                Message.Verbatim(all.Select(o => o.Id)), near.Count > 0 ? Message.Of("answers.near-match", ("near", near[0])) : null));
        }

        return OperationPage.Render(root, found, address.Root(context.Request));
    }

    /// <summary>Every operation of the document.</summary>
    public static IEnumerable<Operation> Operations(JsonElement root) => root.GetProperty("paths").EnumerateObject()
        .SelectMany(p => p.Value.EnumerateObject().Select(o => new Operation(
            o.Value.GetProperty("operationId").GetString()!, o.Name.ToUpperInvariant(), p.Name, o.Value)));
}

/// <summary>An operation of the document.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Method">Its method.</param>
/// <param name="Path">Its address as a template.</param>
/// <param name="Told">What the document tells of it.</param>
internal sealed record Operation(string Id, string Method, string Path, JsonElement Told)
{
    /// <summary>What it answers in a few words.</summary>
    public string Summary => (Told.TryGetProperty("summary", out var text) ? text.GetString()! : Id).TrimEnd('.');
}
