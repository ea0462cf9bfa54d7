using ConeService.Api.Http;
using ConeService.Data;
using Microsoft.Extensions.Configuration.Json;
using Microsoft.Extensions.FileProviders;

namespace ConeService.Api;

/// <summary>Builds and runs the service.</summary>
internal static class ConeServiceHost
{
    /// <summary>Serves until stopped. An invalid data package stops the start with every fault and exit code 1.</summary>
    public static async Task<int> RunAsync(string[] args)
    {
        try
        {
            var app = Build(args);
            await app.RunAsync();
            return 0;
        }
        catch (InvalidPackageException invalid)
        {
            await Console.Error.WriteLineAsync("The data package is not valid; the service does not start.");
            await Console.Error.WriteLineAsync(invalid.Message);
            return 1;
        }
    }

    private static WebApplication Build(string[] args)
    {
        var builder = WebApplication.CreateBuilder(args);
        // Started from another directory, the service would miss its settings and log every request. Lowest rank: all else overrides them.
        var beside = new PhysicalFileProvider(AppContext.BaseDirectory);
        builder.Configuration.Sources.Insert(0, new JsonConfigurationSource { FileProvider = beside, Path = "appsettings.json" });
        builder.AddConeService();
        var app = builder.Build();
        app.UseConeService();
        app.MapConeService();
        return app;
    }
}
