using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Api.Operation;
using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Firing;

namespace ConeService.Api.Features.Datasets;

/// <summary>The data package itself.</summary>
internal static class DatasetEndpoints
{
    public static void MapDataset(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/dataset", Get).WithQuery().Describe("getDataset", Tags.Data).Answers<DatasetDescription>();
        routes.MapRead("/dataset/changes", Changes).WithQuery("from")
            .Describe("listDatasetChanges", Tags.Data).Answers<DatasetChanges>().Problems(400);
    }

    public static void MapDatasetFiles(this IEndpointRouteBuilder routes) => routes.MapRead("/data/{version}/{file}", File).WithQuery()
        .WithName("getDatasetFile").WithSummary("A file of the data package, for ever under its version.").ExcludeFromDescription();

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

    /// <summary>What changed in the data package since an earlier version.</summary>
    /// <remarks>Table by table: rows that came and went, and every cell that differs, with what it held and holds.</remarks>
    /// <param name="from">The earlier version, such as 1.6.0: one of earlierVersions of /v1/dataset, or the one in use, since which
    /// nothing changed.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Changes(string? from, SnapshotHolder snapshots)
    {
        // Against itself a package has no changes: who kept the version in use asks so, and need not know that it is.
        var isServed = from is not null && IsServed(from, snapshots.Current.Dataset.VersionId);
        if (!isServed && !ReleasedPackages.Versions.Contains(from, StringComparer.Ordinal))
        {
            throw new RefusedException(new Finding(
                from is null ? FindingCodes.MemberMissing : FindingCodes.WordUnknown, "from", from,
                from is null
                    ? Message.Of("dataset.from-missing")
                    : Message.Of("schedules.word-unknown", ("sent", from), ("parameter", "from")),
                Message.Verbatim(ReleasedPackages.Versions)));
        }

        return snapshots.Current.Prepare("changes/" + from, (from: from!, isServed), static (r, x) => JsonBody.Cacheable(x.isServed
            ? new DatasetChanges(r.Dataset.VersionId, x.from, ReleasedPackages.Versions, [])
            : r.Package.ChangesSince(ReleasedPackages.Load(x.from), ReleasedPackages.Versions)));
    }

    // Overlays, which stand behind a plus sign, are left out of what is told; one that was not escaped arrives as a blank.
    private static bool IsServed(string asked, string served) => asked.Replace(' ', '+') == served || asked == served.Split('+')[0];

    private static PreparedBody File(string version, string file, SnapshotHolder snapshots) => snapshots.Current.Prepare(
        $"data/{version}/{file}", (version, file), static (r, x) => DatasetFile.Body(r.Dataset, x.version, x.file));

    private static DatasetDescription Describe(FiringReference reference) =>
        reference.Package.Describe() with
        {
            CodeVersion = BuildInfo.Version,
            CodeCommit = BuildInfo.Commit,
            Downloads = DatasetFile.Downloads(reference.Dataset),
            EarlierVersions = ReleasedPackages.Versions,
        };
}
