using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Datasets;

namespace ConeService.Api.Features.Health;

/// <summary>Probes for whoever runs the service.</summary>
internal static class HealthEndpoints
{
    public static void MapHealth(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/health/live", Live).WithQuery().Describe("getLiveness", Tags.Operation).Answers<HealthStatus>();
        routes.MapRead("/health/ready", Ready).WithQuery().Describe("getReadiness", Tags.Operation).Answers<HealthStatus>();
    }

    /// <summary>Whether the process answers.</summary>
    /// <remarks>Says nothing of the data; use it to decide on a restart.</remarks>
    internal static IResult Live() => Probe(new("live", null));

    /// <summary>Whether the service can answer questions.</summary>
    /// <remarks>Ready means that a valid data package is in use; its version is in the answer. A package that was put in its place and is
    /// not used is told of, with the reason, and leaves the service ready.</remarks>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Ready(SnapshotHolder snapshots) => Probe(
        new("ready", snapshots.Current.Dataset.VersionId, snapshots.NotUsed));

    internal static IResult Probe(HealthStatus health) => JsonBody.Posted(health);
}
