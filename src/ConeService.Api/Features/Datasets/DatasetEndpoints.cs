using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Api.Operation;
using ConeService.Contract.Datasets;

namespace ConeService.Api.Features.Datasets;

/// <summary>The data package itself.</summary>
internal static class DatasetEndpoints
{
    public static void MapDataset(this IEndpointRouteBuilder routes) =>
        routes.MapRead("/dataset", Get).WithQuery().Describe("getDataset", Tags.Data).Answers<DatasetDescription>();

    /// <summary>Version, checksums and change log of the data package.</summary>
    /// <remarks>What every answer's datasetVersion refers to.</remarks>
    internal static IResult Get(SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("dataset", static r => JsonBody.Cacheable(
            r.Package.Describe() with { CodeVersion = BuildInfo.Version, CodeCommit = BuildInfo.Commit }));
}
