using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Study;

namespace ConeService.Api.Features.Search;

/// <summary>Everyday words.</summary>
internal static class SearchEndpoints
{
    public static void MapSearch(this IEndpointRouteBuilder routes) =>
        routes.MapRead("/search", Find).WithQuery("q").Describe("search", Tags.Study).Answers<SearchAnswer>().Problems(406);

    /// <summary>Finds what everyday words are about.</summary>
    /// <remarks>Over ids, names, synonyms and texts of faults, terms, processes, cautions, clays, glazes, colours, landmarks and schedules;
    /// cones and temperatures are answered in a sentence. Nothing is told that is not about all that was asked: a slip of the pen is
    /// offered back, and no other word that looks like it.</remarks>
    /// <param name="q">What to find, at most 200 characters: candling, black core, hotter 012 or 06.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Find(string? q, SnapshotHolder snapshots)
    {
        var answer = snapshots.Current.Reference.Study.Search(q);
        return JsonBody.Cacheable(answer).WithPage(() => SearchPage.Render(answer));
    }
}
