using ConeService.Api.Http;
using ConeService.Api.Operation;
using ConeService.Data;
using Microsoft.AspNetCore.Connections;
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
        catch (InvalidSettingException invalid)
        {
            await Console.Error.WriteLineAsync($"The service does not start: {invalid.Message}");
            return 2;
        }
        catch (IOException failure) when (failure.InnerException is AddressInUseException)
        {
            await Console.Error.WriteLineAsync(
                $"The service does not start: {failure.Message} Choose another port: --urls http://localhost:5001");
            return 1;
        }
        catch (InvalidPackageException invalid)
        {
            await Console.Error.WriteLineAsync("The data package is not valid; the service does not start.");
            await Console.Error.WriteLineAsync(invalid.Message);
            return 1;
        }
    }

    // Reading and checking the package takes about as long as making the routes: both are done at once. A bad package stops the start.
    private static WebApplication Build(string[] args)
    {
        SettingNames.CheckOptions(args);
        var builder = WebApplication.CreateBuilder(args);
        // Started from another directory, the service would miss its settings and log every request. Lowest rank: all else overrides them.
        var beside = new PhysicalFileProvider(AppContext.BaseDirectory);
        builder.Configuration.Sources.Insert(0, new JsonConfigurationSource { FileProvider = beside, Path = "appsettings.json" });
        SettingNames.Check(builder.Configuration);
        // What stops the start is told above in one line; the framework would tell it twice, with a stack.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.Critical);
        builder.AddConeService();
        var app = builder.Build();
        var reading = Task.Run(app.Services.GetRequiredService<SnapshotHolder>);
        app.UseConeService();
        app.MapConeService();
        // Routes are made when somebody asks for them, which would be the first request.
        app.UseEndpoints(static _ => { });
        _ = app.Services.GetRequiredService<EndpointDataSource>().Endpoints;
        _ = reading.GetAwaiter().GetResult();
        return app;
    }
}
