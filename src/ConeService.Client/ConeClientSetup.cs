using ConeService.Client.Asking;
using ConeService.Data;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Polly;

namespace ConeService.Client;

/// <summary>Adds the client to a program.</summary>
public static class ConeClientSetup
{
    private static readonly TimeSpan MostRetryAfter = TimeSpan.FromSeconds(2);

    /// <summary>Adds a client for each area: <see cref="IConesClient"/>, <see cref="IConversionsClient"/>, <see cref="ILoadsClient"/>,
    /// <see cref="ISchedulesClient"/>, <see cref="IHeatWorkClient"/>, <see cref="IKilnsClient"/>, <see cref="IMaterialsClient"/>,
    /// <see cref="IColoursClient"/>, <see cref="IPlansClient"/> and <see cref="IDatasetClient"/>.</summary>
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
            AddHttp(services, ServiceAnswerer.SearchClient, root, options, options.LongAttemptTimeout, options.LongTotalTimeout);
        }

        services.AddSingleton<IConesClient, ConesClient>();
        services.AddSingleton<IConversionsClient, ConversionsClient>();
        services.AddSingleton<ILoadsClient, LoadsClient>();
        services.AddSingleton<ISchedulesClient, SchedulesClient>();
        services.AddSingleton<IHeatWorkClient, HeatWorkClient>();
        services.AddSingleton<IKilnsClient, KilnsClient>();
        services.AddSingleton<IMaterialsClient, MaterialsClient>();
        services.AddSingleton<IColoursClient, ColoursClient>();
        services.AddSingleton<IPlansClient, PlansClient>();
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
            // A search takes as long as it was asked to, each time it is asked for.
            r.AttemptTimeout.TimeoutGenerator = a => new(attempt + Search(a.Context));
            r.TotalRequestTimeout.TimeoutGenerator = a => new(total + (Search(a.Context) * (options.Retries + 1)));
            // Every question may be asked again: none changes anything, POST or GET.
            r.Retry.MaxRetryAttempts = options.Retries;
            r.Retry.Delay = TimeSpan.FromMilliseconds(100);
            r.Retry.BackoffType = DelayBackoffType.Exponential;
            r.Retry.UseJitter = true;
            // It may say an hour; who asks waits no longer than the total.
            r.Retry.ShouldRetryAfterHeader = false;
            // Searches last for seconds: while all places are taken, three attempts within half a second are one.
            r.Retry.DelayGenerator = a => new(Search(a.Context) == TimeSpan.Zero ? null : RetryAfter(a.Outcome.Result));
            r.CircuitBreaker.SamplingDuration = attempt * 10;
            r.CircuitBreaker.MinimumThroughput = 20;
            r.CircuitBreaker.FailureRatio = 0.5;
        });
        client.AddHttpMessageHandler(() => new WholeAnswerHandler());
    }

    private static TimeSpan Search(ResilienceContext context) =>
        context.GetRequestMessage() is { } request && request.Options.TryGetValue(ServiceAnswerer.Search, out var search)
            ? search
            : TimeSpan.Zero;

    private static TimeSpan? RetryAfter(HttpResponseMessage? response) => response?.Headers.RetryAfter?.Delta switch
    {
        { } said when said > MostRetryAfter => MostRetryAfter,
        var said => said,
    };
}
