using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Equations;

namespace ConeService.Api.Features.Equations;

/// <summary>What the service computes with.</summary>
internal static class EquationEndpoints
{
    public static void MapEquations(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/equations", List).WithQuery()
            .Describe("listEquations", Tags.Data).Answers<EquationList>(Csv.MediaType).Problems(406);
        routes.MapRead("/equations/{id}", Find).WithQuery()
            .Describe("getEquation", Tags.Data).Answers<EquationDetail>().Problems(400, 404);
    }

    /// <summary>The equations.</summary>
    /// <remarks>What computed answers come from, as plain text, with what it rests on and where it is derived.</remarks>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult List(HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Prepared(request, snapshots.Current, "equations", static r => r.Package.Equations());

    /// <summary>One equation.</summary>
    /// <remarks>Where the member explain of an answer leads.</remarks>
    /// <param name="id">Id of the equation, as explain names it.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Find(string id, SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("equation/" + id, id, static (r, x) => JsonBody.Cacheable(r.Package.Equation(x)));
}
