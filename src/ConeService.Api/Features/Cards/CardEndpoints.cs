using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Features.Cards;

/// <summary>Pages without script that a teacher embeds in a course page with one line.</summary>
internal static class CardEndpoints
{
    private const string Prefix = "cone-";

    public static void MapCards(this IEndpointRouteBuilder routes) =>
        routes.MapRead("/cards/{card}", One).WithQuery().Describe("getCard", Tags.Cards)
            .Produces<string>(StatusCodes.Status200OK, HtmlPage.MediaType).Problems(404);

    /// <summary>A card to embed.</summary>
    /// <remarks><c>cone-6</c>, <c>cone-06</c> …: the end points of one cone on every chart, as a page without script for an
    /// iframe.</remarks>
    /// <param name="card">Name of the card: cone-, then the cone.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult One(string card, SnapshotHolder snapshots)
    {
        var snapshot = snapshots.Current;
        if (!card.StartsWith(Prefix, StringComparison.Ordinal))
        {
            throw new RefusedException(new Finding(
                FindingCodes.NotFound, "card", card, Message.Of("cones.card-unknown", ("card", card)),
                Message.Verbatim(["cone-6", "cone-06", "cone-05.5"])));
        }

        var cone = snapshot.Reference.Cones.Read(card[Prefix.Length..], "card");
        return snapshot.Prepare("card/" + cone, cone, static (r, c) => ConeCard.Render(r.Cones.Describe(c), r));
    }
}
