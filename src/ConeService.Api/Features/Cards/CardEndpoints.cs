using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Api.Http.Reach;
using ConeService.Api.OpenApi;
using ConeService.Api.Operation.Work;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Firing;

namespace ConeService.Api.Features.Cards;

/// <summary>Pages without script that a teacher embeds in a course page with one line.</summary>
internal static class CardEndpoints
{
    public static void MapCards(this IEndpointRouteBuilder routes)
    {
        CardIndex.Map(routes);
        foreach (var kind in CardKinds.All.Where(k => k.Between == "/"))
        {
            var route = routes.MapRead("/cards/" + kind.Pattern,
                (HttpContext context, SnapshotHolder snapshots, ServiceAddress address) => Answer(
                    kind, context.GetRouteValue("id") as string ?? "", context, snapshots.Current, address));
            // A schedule is fitted for whoever asks: as many at a time as other fits.
            if (kind.Name == "schedule") Computations.Bound(route);
            route.WithQuery([.. kind.Names, .. CardLook.Names]).WithEmptyFields()
                .WithName("getCard-" + kind.Name).WithSummary(kind.Tells + ", as a card to embed.")
                .Produces<string>(StatusCodes.Status200OK, HtmlPage.MediaType).ExcludeFromDescription();
        }

        routes.MapRead("/cards/{card}", One).WithQuery(CardLook.Names).WithEmptyFields().Describe("getCard", Tags.Cards)
            .Produces<string>(StatusCodes.Status200OK, HtmlPage.MediaType).Problems(404).AnswersByPath();
    }

    /// <summary>A card to embed.</summary>
    /// <remarks><c>cone-6</c>, <c>cone-06</c> …: the end points of one cone on every chart, as a page without script for an
    /// iframe. The other cards are listed at <c>/cards</c>, with the lines to paste.</remarks>
    /// <param name="card">Name of the card: cone-, then the cone.</param>
    /// <param name="size">short fits into 320 by 360 pixels; full has everything. Left out: full.</param>
    /// <param name="theme">light, dark or auto, as the reader has set the screen. Left out: light in a frame, and auto alone.</param>
    /// <param name="context">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    /// <param name="address">Where the service is reached.</param>
    internal static IResult One(
        string card, string? size, string? theme, HttpContext context, SnapshotHolder snapshots, ServiceAddress address)
    {
        _ = (size, theme);
        if (CardKinds.Find(card) is not { } found)
        {
            throw new RefusedException(new Finding(
                FindingCodes.NotFound, "card", card, Message.Of("cones.card-unknown", ("card", card)),
                Message.Verbatim(["cone-6", "cone-06", "cone-05.5"])));
        }

        // As the chart writes it: however it is spelled, a cone has one card.
        var cone = snapshots.Current.Reference.Cones.Read(found.Id, "card").ToString();
        return Answer(found.Kind, cone, context, snapshots.Current, address);
    }

    private static IResult Answer(CardKind kind, string id, HttpContext context, Snapshot snapshot, ServiceAddress address)
    {
        var look = Mistakes.Try(context, () => CardLook.Read(context.Request), new(CardSize.Full, CardTheme.Light))!;
        if (IsKept(kind, id, context.Request.Query, snapshot.Reference))
        {
            // What depends on the data and the look alone is made once.
            return snapshot.Prepare(
                $"card/{kind.Name}/{id}/{look.Key}", (kind, id, look, address.Configured),
                static (r, x) => Kept(x.kind.Make(new(r, x.id, NoQuery, x.look)), x.look, r, x.Configured));
        }

        var reference = snapshot.Reference;
        var card = kind.Make(new(reference, id, CardAddress.Asked(context.Request.Query), look));
        // Beside other mistakes they are told as any are.
        if (card.Refused is { } wrong && Mistakes.Any(context)) throw wrong;
        return card.Refused is null
            ? Kept(card, look, reference, address.Configured)
            : new RefusedCard(CardPage.Render(card, look, reference, address.Configured), StatusCodes.Status400BadRequest);
    }

    // Of what may stand beside each other only the pairs of the index are kept: there are more than memory should hold.
    private static bool IsKept(CardKind kind, string id, IQueryCollection query, FiringReference reference) =>
        Array.TrueForAll(kind.Names, n => !query.ContainsKey(n)) && (kind.Name != "compare" || kind.Ids!(reference).Any(i => i.Id == id));

    private static IReadOnlyDictionary<string, string> NoQuery { get; } = new Dictionary<string, string>();

    private static PreparedBody Kept(Card card, CardLook look, FiringReference reference, string? origin) =>
        PreparedBody.Text(
            CardPage.Render(card, look, reference, origin), HtmlPage.MediaType, varies: look.IsChosen ? null : CardLook.Header);
}
