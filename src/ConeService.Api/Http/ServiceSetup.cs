using ConeService.Api.Features.Colours;
using ConeService.Api.Features.Conversions;
using ConeService.Api.Features.HeatWork;
using ConeService.Api.Features.Schedules;
using ConeService.Api.Http.Problems;
using ConeService.Api.OpenApi;
using ConeService.Contract.Colours;
using ConeService.Contract.Conversions;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Json;
using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing.Cones.Conversions;
using ConeService.Firing.Schedules.Fitting;
using Microsoft.AspNetCore.Cors.Infrastructure;
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
        builder.Services.Configure<DatasetSettings>(builder.Configuration.GetSection("ConeService:Data"));
        builder.Services.AddSingleton<SnapshotHolder>();
        builder.Services.AddSingleton<AcceptedTypes>();
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.ConfigureHttpJsonOptions(o => ConeJson.Apply(o.SerializerOptions));
        builder.Services.Configure<RouteHandlerOptions>(o => o.ThrowOnBadRequest = true);
        builder.Services.AddCors(ConfigureCors);
        builder.Services.AddConeServiceDocument();
    }

    public static void UseConeService(this WebApplication app)
    {
        // The package is read before the first request, so that a bad one stops the start.
        _ = app.Services.GetRequiredService<SnapshotHolder>().Current;
        app.UseMiddleware<ProblemMiddleware>();
        app.UseRouting();
        app.UseCors();
        app.Use(QueryGuard.Middleware);
    }

    // Read-only look-ups may be embedded by any page; what takes a body is for servers and scripts.
    private static void ConfigureCors(CorsOptions cors) => cors.AddDefaultPolicy(p => p
        .AllowAnyOrigin()
        .WithMethods("GET", "HEAD")
        .WithHeaders(HeaderNames.Accept, HeaderNames.IfNoneMatch)
        .WithExposedHeaders(HeaderNames.ETag));
}
