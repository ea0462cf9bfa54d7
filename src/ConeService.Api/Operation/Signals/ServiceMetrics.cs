using System.Diagnostics.Metrics;

namespace ConeService.Api.Operation.Signals;

/// <summary>The service's own instruments, beside those of the framework (<c>http.server.request.duration</c> and its like).</summary>
internal sealed class ServiceMetrics
{
    /// <summary>Name of the meter.</summary>
    public const string MeterName = "ConeService";

    private static readonly double[] Seconds = [0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 20];

    private readonly Histogram<double> computing;
    private readonly Counter<long> refused;
    private readonly Counter<long> turnedAway;
    private readonly Counter<long> tooLong;
    private (string Version, string Checksum)? dataset;

    public ServiceMetrics(IMeterFactory meters)
    {
        var meter = meters.Create(MeterName, BuildInfo.Version);
        computing = meter.CreateHistogram<double>(
            "coneservice.computation.duration", "s", "Time from a request that was read to its answer that is not yet sent.",
            advice: new() { HistogramBucketBoundaries = Seconds });
        refused = meter.CreateCounter<long>(
            "coneservice.dataset.refused", "{package}", "Changed data packages that were not valid and not used.");
        turnedAway = meter.CreateCounter<long>(
            "coneservice.computation.turned_away", "{request}", "Requests answered 503, as too many were computing or waiting.");
        tooLong = meter.CreateCounter<long>(
            "coneservice.computation.given_up", "{request}", "Requests answered 503, as they took too long.");
        meter.CreateObservableGauge(
            "coneservice.dataset.info", Dataset, "{package}", "1 for the data package in use; its version and checksum are attributes.");
        meter.CreateObservableGauge(
            "coneservice.build.info", () => new Measurement<int>(
                1, new("version", BuildInfo.Version), new KeyValuePair<string, object?>("commit", BuildInfo.Commit ?? "")),
            "{build}", "1 for the build that runs; its version and commit are attributes.");
    }

    /// <summary>A computation that ended.</summary>
    /// <param name="route">Template of its address.</param>
    /// <param name="taken">How long it took.</param>
    public void Computed(string route, TimeSpan taken) => computing.Record(taken.TotalSeconds, Route(route));

    /// <summary>A package that was not used.</summary>
    public void PackageRefused() => refused.Add(1);

    /// <summary>A request that found no room.</summary>
    /// <param name="route">Template of its address.</param>
    public void TurnedAway(string route) => turnedAway.Add(1, Route(route));

    /// <summary>A request that took too long.</summary>
    /// <param name="route">Template of its address.</param>
    public void GivenUp(string route) => tooLong.Add(1, Route(route));

    /// <summary>The package in use from now on.</summary>
    public void Uses(string version, string checksum) => dataset = (version, checksum);

    private static KeyValuePair<string, object?> Route(string route) => new("http.route", route);

    private IEnumerable<Measurement<int>> Dataset() => dataset is { } used
        ? [new(1, new("version", used.Version), new KeyValuePair<string, object?>("checksum", used.Checksum))]
        : [];
}
