using ConeService.Client.Asking;
using ConeService.Data;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Polly;

namespace ConeService.Client;

/// <summary>Adds the client to a program.</summary>
public static class ConeClientSetup
{
    /// <summary>Adds a client for each area: <see cref="IConesClient"/>, <see cref="IConversionsClient"/>, <see cref="ILoadsClient"/>,
    /// <see cref="ISchedulesClient"/>, <see cref="IHeatWorkClient"/>, <see cref="IKilnsClient"/>, <see cref="IMaterialsClient"/>,
    /// <see cref="IColoursClient"/> and <see cref="IDatasetClient"/>.</summary>
    /// <param name="services">The services of the program.</param>
    /// <param name="configure">Says where the service is, and what answers when it is away.</param>
    public static IServiceCollection AddConeClient(this IServiceCollection services, Action<ConeClientOptions> configure)
    {
        var options = new ConeClientOptions();
        configure(options);
        if (options is { Service: null, AnswerLocally: false })
            throw new ArgumentException("Give the address of a service, or let local data answer.", nameof(configure));
        services.TryAddSingleton(TimeProvider.System);
        services.AddLogging();
        services.AddSingleton<LocalPackage>(_ => new(new DatasetOptions { Path = options.PackagePath, Overlays = [.. options.Overlays] }));
        services.AddSingleton<LocalAnswerer>();
        services.AddSingleton<AnswerCache>(s => new(options.CachedAnswers, s.GetRequiredService<TimeProvider>()));
        services.AddSingleton<ServiceAnswerer>();
        services.AddSingleton<IAnswerer>(s => options switch
        {
            { Service: null } => s.GetRequiredService<LocalAnswerer>(),
            { AnswerLocally: false } => s.GetRequiredService<ServiceAnswerer>(),
            _ => ActivatorUtilities.CreateInstance<FallbackAnswerer>(s),
        });
        if (options.Service is { } root)
        {
            AddHttp(services, ServiceAnswerer.ShortClient, root, options, options.AttemptTimeout, options.TotalTimeout);
            AddHttp(services, ServiceAnswerer.LongClient, root, options, options.LongAttemptTimeout, options.LongTotalTimeout);
        }

        services.AddSingleton<IConesClient, ConesClient>();
        services.AddSingleton<IConversionsClient, ConversionsClient>();
        services.AddSingleton<ILoadsClient, LoadsClient>();
        services.AddSingleton<ISchedulesClient, SchedulesClient>();
        services.AddSingleton<IHeatWorkClient, HeatWorkClient>();
        services.AddSingleton<IKilnsClient, KilnsClient>();
        services.AddSingleton<IMaterialsClient, MaterialsClient>();
        services.AddSingleton<IColoursClient, ColoursClient>();
        services.AddSingleton<IDatasetClient, DatasetClient>();
        return services;
    }

    private static void AddHttp(
        IServiceCollection services, string name, Uri root, ConeClientOptions options, TimeSpan attempt, TimeSpan total)
    {
        var client = services.AddHttpClient(name, c =>
        {
            // A relative address is joined to the last slash.
            c.BaseAddress = new Uri(root.AbsoluteUri.TrimEnd('/') + "/");
            // The handlers below wait, and no longer than they should.
            c.Timeout = Timeout.InfiniteTimeSpan;
        });
        client.AddStandardResilienceHandler(r =>
        {
            r.AttemptTimeout.Timeout = attempt;
            r.TotalRequestTimeout.Timeout = total;
            // Every question may be asked again: none changes anything, POST or GET.
            r.Retry.MaxRetryAttempts = options.Retries;
            r.Retry.Delay = TimeSpan.FromMilliseconds(100);
            r.Retry.BackoffType = DelayBackoffType.Exponential;
            r.Retry.UseJitter = true;
            // It may say an hour; who asks waits no longer than the total.
            r.Retry.ShouldRetryAfterHeader = false;
            r.CircuitBreaker.SamplingDuration = attempt * 10;
            r.CircuitBreaker.MinimumThroughput = 20;
            r.CircuitBreaker.FailureRatio = 0.5;
        });
        client.AddHttpMessageHandler(() => new WholeAnswerHandler());
    }
}
