using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Api.Operation;
using ConeService.Contract.Datasets;
using ConeService.Firing;

namespace ConeService.Api.Features.Datasets;

/// <summary>The data package itself.</summary>
internal static class DatasetEndpoints
{
    public static void MapDataset(this IEndpointRouteBuilder routes) =>
        routes.MapRead("/dataset", Get).WithQuery().Describe("getDataset", Tags.Data).Answers<DatasetDescription>();

    /// <summary>Version, checksums and change log of the data package.</summary>
    /// <remarks>What every answer's datasetVersion refers to.</remarks>
    /// <param name="snapshots">The data in use.</param>
    /// <param name="context">The request.</param>
    internal static IResult Get(SnapshotHolder snapshots, HttpContext context)
    {
        // A pinned answer is kept for ever, and what waits today is gone tomorrow.
        return snapshots.NotUsed is { } notUsed && !PinnedDataset.Answers(context)
            ? JsonBody.Cacheable(Describe(snapshots.Current.Reference) with { PackageNotUsed = notUsed })
            : snapshots.Current.Prepare("dataset", static r => JsonBody.Cacheable(Describe(r)));
    }

    private static DatasetDescription Describe(FiringReference reference) =>
        reference.Package.Describe() with { CodeVersion = BuildInfo.Version, CodeCommit = BuildInfo.Commit };
}
