using ConeService.Api.Features.HeatWork;
using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Kilns;

namespace ConeService.Api.Features.Kilns;

/// <summary>What firings tell of their kiln.</summary>
internal static class KilnEndpoints
{
    public static void MapKilns(this IEndpointRouteBuilder routes) =>
        routes.MapPosted("/kilns/calibrate", Calibrate).WithQuery().WithMetadata(new UploadLimit())
            .Accepts<CalibrateRequest>(JsonBody.MediaType)
            .Describe("calibrateKiln", Tags.Schedules).Answers<CalibrateAnswer>().Problems(413, 415);

    /// <summary>A kiln as its firings show it.</summary>
    /// <remarks>Logs of up to 30 firings of one electric kiln in the order of time, each with its load, programme, meter reading and
    /// witness cones where they are known: wall, leak, power and the offset of the thermocouple with standard errors, ready to be sent as
    /// the kiln of the next fit; and what changes from firing to firing, with a verdict. What the firings do not tell is null, with the
    /// reason. Nothing is kept. Takes up to some seconds for 30 firings.</remarks>
    /// <param name="body">The kiln and its firings.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Calibrate(JsonRequest<CalibrateRequest> body, HttpRequest request, SnapshotHolder snapshots) =>
        JsonBody.Posted(snapshots.Current.Reference.Kilns.Calibrate(body.Value, request.HttpContext.RequestAborted));
}
