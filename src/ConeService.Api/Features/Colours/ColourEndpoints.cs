using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Batches;
using ConeService.Contract.Colours;

namespace ConeService.Api.Features.Colours;

/// <summary>What colour will it be?</summary>
internal static class ColourEndpoints
{
    public static void MapColours(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/colours", Find).WithQuery("colorant", "atmosphere", "base", "cone", "percent", "kiln", "colour")
            .Describe("findColours", Tags.Colour).Answers<ColourAnswer>().Problems(400);
        routes.MapPosted("/colours/resolve", Resolve).WithQuery()
            .Accepts<ColourRequest>(JsonBody.MediaType)
            .Describe("resolveColour", Tags.Colour).Answers<ColourResolution>().Problems(400, 413, 415);
        routes.MapPosted("/colours/resolve/batch", ResolveBatch).WithQuery()
            .Accepts<ColourBatchRequest>(JsonBody.MediaType)
            .Describe("resolveColours", Tags.Colour).Answers<BatchAnswer<ColourResolution>>().Problems(413, 415);
    }

    /// <summary>Colours by colorant, atmosphere, base, cone and percentage.</summary>
    /// <remarks>
    /// Ranks the notes that apply: the base asked for before any, the percentage inside before outside, heat respected. Without an
    /// atmosphere oxidation and reduction stand side by side; without a colorant every colorant is told. Says which question it
    /// answered and what it assumed.
    /// </remarks>
    /// <param name="colorant">A colorant or a form of it: copper, copper-carbonate, Fe2O3. Left out: every colorant.</param>
    /// <param name="atmosphere">oxidation, neutral, reduction, salt-soda, post-fire-reduction or local-reduction.</param>
    /// <param name="base">The base glaze: calcium, tin, boron … (all at /v1/colorants). Left out: any.</param>
    /// <param name="cone">The cone, as text: 10, 06.</param>
    /// <param name="percent">Percentage of the colorant, added to 100 of glaze: 0.5.</param>
    /// <param name="kiln">How the kiln is heated: electric, gas, wood, raku or vapour; raises cautions.</param>
    /// <param name="colour">Only notes of this colour word: green, red … (all at /v1/colorants).</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Find(
        string? colorant,
        string? atmosphere,
        string? @base,
        string? cone,
        string? percent,
        string? kiln,
        string? colour,
        HttpRequest request,
        SnapshotHolder snapshots)
    {
        var snapshot = snapshots.Current;
        return request.QueryString.HasValue
            ? JsonBody.Cacheable(snapshot.Reference.Colours.Find(colorant, atmosphere, @base, cone, percent, kiln, colour))
            : snapshot.Prepare("colours", static r => JsonBody.Cacheable(r.Colours.Find()));
    }

    /// <summary>The colour of a recipe.</summary>
    /// <remarks>
    /// Several colorants and additives with percentages, base, atmosphere and cone: the interactions with reasons, sources and
    /// warnings, and the same recipe in oxidation and in reduction side by side.
    /// </remarks>
    /// <param name="body">The recipe.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Resolve(JsonRequest<ColourRequest> body, SnapshotHolder snapshots) =>
        JsonBody.Posted(snapshots.Current.Reference.Colours.Resolve(body.Value));

    /// <summary>The colours of up to 100 recipes.</summary>
    /// <remarks>Each recipe is answered as it would be alone, in the order asked; one that is refused gets its problems instead.</remarks>
    /// <param name="body">The recipes.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult ResolveBatch(JsonRequest<ColourBatchRequest> body, HttpRequest request, SnapshotHolder snapshots) =>
        JsonBody.Posted(snapshots.Current.Reference.Colours.ResolveEach(body.Value), request);
}
