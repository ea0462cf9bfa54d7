using ConeService.Client.Tests.Support;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.Logging;

[assembly: AssemblyFixture(typeof(RunningService))]

namespace ConeService.Client.Tests.Support;

/// <summary>The service on a port of its own, once for all tests.</summary>
public sealed class RunningService : IDisposable
{
    private readonly Host host = new();

    public RunningService()
    {
        host.UseKestrel(0);
        host.StartServer();
        Address = host.ClientOptions.BaseAddress;
    }

    /// <summary>Its root.</summary>
    public Uri Address { get; }

    public void Dispose() => host.Dispose();

    private sealed class Host : WebApplicationFactory<Program>
    {
        protected override void ConfigureWebHost(IWebHostBuilder builder) => builder.ConfigureLogging(l => l.ClearProviders());
    }
}
