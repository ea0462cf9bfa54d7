using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Api.OpenApi;
using ConeService.Contract.Answers;
using ConeService.Contract.Batches;
using ConeService.Contract.Loads;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Features.Loads;

/// <summary>Will this load survive? And the rules that say so.</summary>
internal static class LoadEndpoints
{
    public static void MapLoads(this IEndpointRouteBuilder routes)
    {
        routes.MapPosted("/loads/check", CheckLoad).WithQuery("detail").Accepts<LoadRequest>(JsonBody.MediaType)
            .Describe("checkLoad", Tags.Loads).Answers<LoadAnswer>().Problems(400, 413, 415);
        routes.MapPosted("/loads/check/batch", CheckLoads).WithQuery("detail").Accepts<LoadBatchRequest>(JsonBody.MediaType)
            .Describe("checkLoads", Tags.Loads).Answers<BatchAnswer<LoadAnswer>>().Problems(413, 415);
        routes.MapRead("/pairings/check", FindPairing)
            .WithQuery("body", "glaze", "cone", "atmosphere", "firingKind", "kind", "state", "use")
            .Describe("findPairing", Tags.Loads).Answers<PairingAnswer>().Problems(400);
        routes.MapPosted("/pairings/check", CheckPairing).WithQuery().Accepts<PairingRequest>(JsonBody.MediaType)
            .Describe("checkPairing", Tags.Loads).Answers<PairingAnswer>().Problems(400, 413, 415);
        routes.MapPosted("/pairings/check/batch", CheckPairings).WithQuery().Accepts<PairingBatchRequest>(JsonBody.MediaType)
            .Describe("checkPairings", Tags.Loads).Answers<BatchAnswer<PairingAnswer>>().Problems(413, 415);
        routes.MapRead("/reason-codes", ReasonCodes).WithQuery()
            .Describe("listReasonCodes", Tags.Loads).Answers<ReasonCodeList>(Csv.MediaType).Problems(406);
        routes.MapRead("/load-rules", Rules).WithQuery()
            .Describe("listLoadRules", Tags.Loads).Answers<LoadRuleList>(Csv.MediaType).Problems(406);
        routes.MapRead("/load-rules/{id}", Rule).WithQuery()
            .Describe("getLoadRule", Tags.Loads).Answers<LoadRuleDetail>().Problems(400, 404);
        routes.MapRead("/firing-kinds", Kinds).WithQuery()
            .Describe("listFiringKinds", Tags.Loads).Answers<FiringKindList>(Csv.MediaType).Problems(406);
        routes.MapRead("/disagreements", Disagreements).WithQuery()
            .Describe("listDisagreements", Tags.Data).Answers<DisagreementList>(Csv.MediaType).Problems(406);
    }

    /// <summary>Will this load survive?</summary>
    /// <remarks>
    /// A kiln, a firing and up to 2,000 pieces: a verdict for each piece and for the load, each with reasons that can be shown to a
    /// student, and the fewest firings that accept what this one does not. A material nobody knows is for review; the other pieces
    /// still get their verdicts. The check knows cones and materials, not shelves, draughts or schedules: whoever fires decides.
    /// </remarks>
    /// <param name="body">The load.</param>
    /// <param name="detail">full, or verdicts for a light answer: reasons once in a table, to which pieces refer. Left out: full.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult CheckLoad(JsonRequest<LoadRequest> body, string? detail, SnapshotHolder snapshots) =>
        JsonBody.Posted(snapshots.Current.Reference.Loads.Check(body.Value, detail));

    /// <summary>Up to 50 loads at once.</summary>
    /// <remarks>Each load is judged as it would be alone, in the order asked; one that is refused gets its problems instead.</remarks>
    /// <param name="body">The loads.</param>
    /// <param name="detail">full or verdicts, as of a load alone. Left out: full.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult CheckLoads(
        JsonRequest<LoadBatchRequest> body, string? detail, HttpRequest request, SnapshotHolder snapshots) =>
        JsonBody.Posted(snapshots.Current.Reference.Loads.CheckEach(body.Value, detail), request);

    /// <summary>Do this clay, this glaze and this firing go together? As a link.</summary>
    /// <remarks>The same question as posted, for what fits a link; pointers are those of the question posted.</remarks>
    /// <param name="body">Id of a clay body, from /v1/clay-bodies.</param>
    /// <param name="glaze">Id of a glaze or decoration, from /v1/glazes; several separated by commas, innermost first. Left out: bare
    /// ware.</param>
    /// <param name="cone">The cone of the firing, as text: 6, 06.</param>
    /// <param name="atmosphere">oxidation, neutral or reduction.</param>
    /// <param name="firingKind">bisque, glaze, single, overglaze, raku, salt, soda, wood, pit or saggar.</param>
    /// <param name="kind">Short for firingKind.</param>
    /// <param name="state">State of the ware. Left out: the state that such a firing takes.</param>
    /// <param name="use">food or decorative. Left out: nothing is promised for food.</param>
    /// <param name="context">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult FindPairing(
        string? body, string? glaze, string? cone, string? atmosphere, string? firingKind, string? kind, string? state, string? use,
        HttpContext context, SnapshotHolder snapshots)
    {
        // Two names of one thing: whichever was not read would be dropped in silence.
        if (firingKind is not null && kind is not null && firingKind != kind)
        {
            Mistakes.Add(context, new(
                FindingCodes.RepeatedParameter, "kind", kind, Message.Of("loads.kind-twice", ("kind", kind), ("firing-kind", firingKind)),
                [Message.Of("http.one-value")]));
        }

        try
        {
            return JsonBody.Cacheable(snapshots.Current.Reference.Loads.Check(
                new PairingQuery(body, glaze, cone, atmosphere, firingKind ?? kind, state, use)));
        }
        catch (RefusedException refused) when (firingKind is null && kind is not null)
        {
            // Told of the name that was sent.
            throw new RefusedException([.. refused.Findings.Select(f => f.Field == "firingKind" ? f with { Field = "kind" } : f)]);
        }
    }

    /// <summary>Do this clay, these coats and this firing go together?</summary>
    /// <remarks>The load check for a single piece; what is left out is assumed and said so.</remarks>
    /// <param name="body">The pairing.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult CheckPairing(JsonRequest<PairingRequest> body, SnapshotHolder snapshots) =>
        JsonBody.Posted(snapshots.Current.Reference.Loads.Check(body.Value));

    /// <summary>Up to 100 pairings at once.</summary>
    /// <remarks>Each pairing is judged as it would be alone, in the order asked; one that is refused gets its problems instead.</remarks>
    /// <param name="body">The pairings.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult CheckPairings(JsonRequest<PairingBatchRequest> body, HttpRequest request, SnapshotHolder snapshots) =>
        JsonBody.Posted(snapshots.Current.Reference.Loads.CheckEach(body.Value), request);

    /// <summary>The kinds of reason.</summary>
    /// <remarks>Every code that a reason of a load check may have, with what it means and the load rules it rests on. Codes are added and
    /// never renamed or given another meaning: programs may rely on them.</remarks>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult ReasonCodes(HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Prepared(request, snapshots.Current, "reason-codes", static r => r.Loads.ReasonCodes());

    /// <summary>The rules of loading.</summary>
    /// <remarks>Those with reason codes are applied by the load check; the others are for whoever loads the kiln.</remarks>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Rules(HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Prepared(request, snapshots.Current, "load-rules", static r => r.Loads.Rules());

    /// <summary>One rule of loading.</summary>
    /// <remarks>With where sources contradict each other on it.</remarks>
    /// <param name="id">Id of the rule, as reasons name it.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Rule(string id, SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("load-rule/" + id, id, static (r, x) => JsonBody.Cacheable(r.Loads.Rule(x)));

    /// <summary>The kinds of firing and the kilns.</summary>
    /// <remarks>What each kind of firing needs of kiln, atmosphere and ware, and what it does to the ware.</remarks>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Kinds(HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Prepared(request, snapshots.Current, "firing-kinds", static r => r.Loads.Kinds());

    /// <summary>Where sources contradict each other.</summary>
    /// <remarks>Both positions, what is to be thought of them, and what this package adopts.</remarks>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Disagreements(HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Prepared(request, snapshots.Current, "disagreements", static r => r.Loads.Disagreements());
}
