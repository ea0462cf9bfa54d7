using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Api.Features.Posters;

/// <summary>Pages to print: posters for the kiln room, hand-outs for a class.</summary>
internal static class PosterEndpoints
{
    public static void MapPosters(this IEndpointRouteBuilder routes)
    {
        routes
            .MapRead("/posters/{poster}", One).WithQuery("paper")
            .WithName("getPoster")
            .WithSummary("A page to print on A4, letter or A3: chart, cautions, before-you-load, cones, process-salt.")
            .Produces<string>(StatusCodes.Status200OK, HtmlPage.MediaType).ExcludeFromDescription();
        // They are listed where the cards are.
        routes.MapGet("/posters", () => Results.Redirect(new Address("/cards").ToString() + "#posters")).ExcludeFromDescription();
    }

    private static PreparedBody One(string poster, string? paper, HttpContext context, SnapshotHolder snapshots)
    {
        var size = Paper.A4;
        if (!string.IsNullOrEmpty(paper) && !EnumWords.TryRead(paper, out size))
        {
            Mistakes.Add(context, new(
                FindingCodes.WordUnknown, "paper", paper, Message.Of("members.word-unknown", ("sent", paper), ("member", "paper")),
                Message.Verbatim(EnumWords.All<Paper>())));
        }

        return snapshots.Current.Prepare($"poster/{size}/{poster}", (poster, size), static (r, x) =>
            PosterPage.Render(PosterKinds.Make(r, x.poster) ?? throw Unknown(r, x.poster), x.size, r));
    }

    private static RefusedException Unknown(Firing.FiringReference reference, string poster) => new(new Finding(
        FindingCodes.NotFound, "poster", poster, Message.Of("answers.not-found", ("noun", "poster"), ("id", poster)),
        Message.Verbatim(PosterKinds.Names(reference).Select(p => p.Name))));
}
