using OpenTelemetry.Metrics;
using OpenTelemetry.Resources;
using OpenTelemetry.Trace;

namespace ConeService.Api.Operation.Signals;

/// <summary>
/// Sends metrics and traces where the usual variables of OpenTelemetry say, and shows metrics as Prometheus reads them where that is
/// configured. With neither, nothing is collected.
/// </summary>
internal static class Telemetry
{
    /// <summary>Where Prometheus finds the metrics.</summary>
    public const string Path = "/metrics";

    // What the specification of the OTLP exporter reads; the ends of single signals too.
    private static readonly string[] Endpoints =
        ["OTEL_EXPORTER_OTLP_ENDPOINT", "OTEL_EXPORTER_OTLP_METRICS_ENDPOINT", "OTEL_EXPORTER_OTLP_TRACES_ENDPOINT"];

    public static void Add(WebApplicationBuilder builder)
    {
        builder.Services.AddSingleton<ServiceMetrics>();
        var settings = MetricsSettings.Read(builder.Configuration);
        var sends = Endpoints.Any(e => builder.Configuration[e] is { Length: > 0 });
        if (!sends && settings is { Enabled: false, Port: null }) return;
        var telemetry = builder.Services.AddOpenTelemetry()
            .ConfigureResource(r => r.AddService("coneservice", serviceVersion: BuildInfo.Version));
        telemetry.WithMetrics(metrics =>
        {
            metrics.AddMeter(
                ServiceMetrics.MeterName, "Microsoft.AspNetCore.Hosting", "Microsoft.AspNetCore.Server.Kestrel", "System.Runtime");
            if (sends) metrics.AddOtlpExporter();
            if (settings.Port is { } port)
            {
                metrics.AddPrometheusHttpListener(o =>
                {
                    o.Host = "+";
                    o.Port = port;
                    o.ScrapeEndpointPath = Path;
                });
            }
            else if (settings.Enabled) metrics.AddPrometheusExporter();
        });
        if (sends) telemetry.WithTracing(traces => traces.AddAspNetCoreInstrumentation().AddOtlpExporter());
    }

    /// <summary>Shows the metrics beside the service, where that is configured.</summary>
    public static void Map(WebApplication app)
    {
        if (MetricsSettings.Read(app.Configuration) is { Enabled: true, Port: null }) app.MapPrometheusScrapingEndpoint(Path);
    }
}
