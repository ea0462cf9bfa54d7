using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Cones;

namespace ConeService.Api.Features.Temperatures;

/// <summary>From a temperature to the cone it reaches.</summary>
internal static class TemperatureEndpoints
{
    public static void MapTemperatures(this IEndpointRouteBuilder routes) =>
        routes.MapRead("/temperatures/{temperature}/cone", Cone).WithQuery("rate", "chart")
            .Describe("getConeReached", Tags.Cones).Answers<ConeReading>(OneLine.MediaType).Problems(406);

    /// <summary>The cone that a steady ramp to a temperature puts down.</summary>
    /// <remarks>No hold, instant cooling: the cone reached, the next one, how far between them, and the margin. Answers
    /// <c>6 and 0.47 of the way to 7</c> as text/plain.</remarks>
    /// <param name="temperature">The temperature with its unit: 1222C, 2232F, 1495K.</param>
    /// <param name="rate">Heating rate over the last 100 °C with its unit: 60C/h, 108F/h, 1C/min. Left out: the chart's usual
    /// rate, said in assumed.</param>
    /// <param name="chart">Name of the chart, from /v1/charts. Left out: witness-self-supporting, said in assumed.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Cone(string temperature, string? rate, string? chart, HttpRequest request, SnapshotHolder snapshots) =>
        OneLine.Choose(request, snapshots.Current.Reference.Cones.Reading(temperature, rate, chart), OneLine.Of);
}
