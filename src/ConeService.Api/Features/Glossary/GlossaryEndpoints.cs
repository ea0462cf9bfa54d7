using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Study;

namespace ConeService.Api.Features.Glossary;

/// <summary>The terms of the trade.</summary>
internal static class GlossaryEndpoints
{
    public static void MapGlossary(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/glossary", List).WithQuery()
            .Describe("listTerms", Tags.Study).Answers<TermList>(Csv.MediaType).Problems(406);
        routes.MapRead("/glossary/{id}", One).WithQuery().Describe("getTerm", Tags.Study).Answers<TermDetail>().Problems(400, 404);
    }

    /// <summary>The terms of the trade.</summary>
    /// <remarks>Greenware, candling, soaking, heat work and others, each in a sentence or two of everyday English.</remarks>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult List(HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Prepared(request, snapshots.Current, "glossary", static r => r.Study.Terms());

    /// <summary>One term of the trade.</summary>
    /// <remarks>With terms to read next, and where this service tells more.</remarks>
    /// <param name="id">Id of the term.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult One(string id, SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("term/" + id, id, static (r, x) => JsonBody.Cacheable(r.Study.Term(x)));
}
