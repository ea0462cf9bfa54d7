using ConeService.Api.Http.Problems;
using ConeService.Api.Http.Reach;
using ConeService.Api.OpenApi;
using ConeService.Api.Operation.Signals;
using ConeService.Api.Operation.Work;
using ConeService.Contract.Json;
using Microsoft.AspNetCore.Builder.Extensions;
using Microsoft.AspNetCore.Cors.Infrastructure;
using Microsoft.Extensions.Options;
using Microsoft.Net.Http.Headers;

namespace ConeService.Api.Http;

/// <summary>Registers what the host needs and orders its pipeline.</summary>
internal static class ServiceSetup
{
    /// <summary>Largest request body, bytes: two thousand pieces with materials of their own, indented, fit twice over.</summary>
    public const long LargestBody = 4 * 1024 * 1024;

    public static void AddConeService(this WebApplicationBuilder builder)
    {
        builder.Logging.ClearProviders().AddJsonConsole(o =>
        {
            o.IncludeScopes = false;
            o.UseUtcTimestamp = true;
            o.TimestampFormat = "yyyy-MM-ddTHH:mm:ss.fffZ";
        });
        builder.WebHost.ConfigureKestrel(k =>
        {
            k.AddServerHeader = false;
            k.Limits.MaxRequestBodySize = LargestBody;
        });
        // What runs when the service is told to stop has this long to end; then its connection is cut.
        builder.Services.Configure<HostOptions>(o => o.ShutdownTimeout = TimeSpan.FromSeconds(8));
        Telemetry.Add(builder);
        builder.Services.AddSingleton<Computations>();
        builder.Services.Configure<DatasetSettings>(builder.Configuration.GetSection("ConeService:Data"));
        builder.Services.AddSingleton<SnapshotHolder>();
        builder.Services.Configure<AddressSettings>(builder.Configuration.GetSection("ConeService"));
        builder.Services.AddSingleton<ServiceAddress>();
        builder.Services.AddSingleton<AcceptedTypes>();
        builder.Services.AddSingleton<NearPaths>();
        builder.Services.AddSingleton<PublishedDocument>();
        Compression.Add(builder.Services);
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.ConfigureHttpJsonOptions(o => ConeJson.Apply(o.SerializerOptions));
        builder.Services.Configure<RouteHandlerOptions>(o => o.ThrowOnBadRequest = true);
        builder.Services.AddCors(ConfigureCors);
        builder.Services.AddConeServiceDocument();
    }

    public static void UseConeService(this WebApplication app)
    {
        // Asked for when the pipeline is made: until then the package is being read.
        SnapshotHolder Snapshots() => app.Services.GetRequiredService<SnapshotHolder>();
        _ = app.Services.GetRequiredService<Computations>();
        var address = app.Services.GetRequiredService<ServiceAddress>();
        app.UseMiddleware<AccessLog>();
        if (ProxySettings.Read(app.Services.GetRequiredService<IOptions<AddressSettings>>().Value) is { } proxies)
            app.UseForwardedHeaders(proxies);
        // Not UsePathBase, which routes too: the suffix of a path would come off too late.
        if (address.ConfiguredPrefix is { Length: > 0 } prefix) app.Use(next => new UsePathBaseMiddleware(next, prefix).Invoke);
        app.Use(AnyOrigin.Middleware);
        app.Use(PagePolicy.Middleware);
        app.UseResponseCompression();
        // Before what follows: problems are told in the language asked for too.
        app.Use(next => Language.Middleware(next, Snapshots(), address));
        app.Use(next => KnownPath.Middleware(next, Snapshots()));
        app.UseMiddleware<ProblemMiddleware>();
        app.Use(Suffix.Strip);
        app.UseRouting();
        app.UseCors();
        app.Use(QueryGuard.Middleware);
    }

    // Any page may ask anything: answers are computed from what was sent and from public data, nothing is stored, and no cookie counts.
    private static void ConfigureCors(CorsOptions cors) => cors.AddDefaultPolicy(p => p
        .AllowAnyOrigin()
        .WithMethods("GET", "HEAD", "POST")
        .WithHeaders(HeaderNames.Accept, HeaderNames.AcceptLanguage, HeaderNames.ContentType, HeaderNames.IfNoneMatch,
            HeaderNames.TraceParent, HeaderNames.TraceState)
        .WithExposedHeaders(AnyOrigin.Exposed)
        .SetPreflightMaxAge(TimeSpan.FromDays(1)));
}
