using System.Diagnostics;
using System.Threading.RateLimiting;
using ConeService.Api.Operation.Signals;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Firing;

namespace ConeService.Api.Operation.Work;

/// <summary>
/// Lets only so many requests compute at a time, so that the rest of the service answers meanwhile. A request takes its place when it
/// has been read and gives it back before the answer is sent: who sends or reads slowly holds nobody up.
/// </summary>
internal sealed class Computations : IDisposable
{
    // Seconds; most computations take less.
    private const string RetryAfter = "1";

    private readonly ComputationSettings settings;
    private readonly ServiceMetrics metrics;
    private readonly ConcurrencyLimiter limiter;

    public Computations(IConfiguration configuration, ServiceMetrics metrics)
    {
        settings = ComputationSettings.Read(configuration);
        this.metrics = metrics;
        limiter = new(new()
        {
            PermitLimit = settings.AtOnce,
            QueueLimit = settings.Waiting,
            QueueProcessingOrder = QueueProcessingOrder.OldestFirst,
        });
    }

    /// <summary>Whether plans may be made with the native solver.</summary>
    public bool Solver => settings.Solver;

    /// <summary>Bounds every POST of a group.</summary>
    public static T BoundPosts<T>(T builder)
        where T : IEndpointConventionBuilder
    {
        builder.Add(endpoint =>
        {
            if (endpoint.Metadata.OfType<HttpMethodMetadata>().Any(m => m.HttpMethods.Contains(HttpMethods.Post))) Bound(endpoint);
        });
        return builder;
    }

    /// <summary>Bounds one address: for what computes as much as a POST does.</summary>
    public static T Bound<T>(T builder)
        where T : IEndpointConventionBuilder
    {
        builder.Add(Bound);
        return builder;
    }

    public void Dispose() => limiter.Dispose();

    private static void Bound(EndpointBuilder endpoint)
    {
        var route = (endpoint as RouteEndpointBuilder)?.RoutePattern.RawText ?? "";
        endpoint.FilterFactories.Add((factory, next) =>
        {
            var computations = factory.ApplicationServices.GetRequiredService<Computations>();
            return context => computations.Run(route, context, next);
        });
    }

    private async ValueTask<object?> Run(string route, EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        var http = context.HttpContext;
        using var lease = await limiter.AcquireAsync(1, http.RequestAborted);
        if (!lease.IsAcquired)
        {
            metrics.TurnedAway(route);
            http.Response.Headers.RetryAfter = RetryAfter;
            throw Refuse(FindingCodes.TooBusy, Message.Of("http.too-busy"));
        }

        var started = Stopwatch.GetTimestamp();
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(http.RequestAborted);
        var seconds = settings.SecondsAtMost + (http.GetEndpoint()?.Metadata.GetMetadata<LongComputation>()?.Seconds ?? 0);
        patience.CancelAfter(TimeSpan.FromSeconds(seconds));
        Patience.Use(patience.Token);
        try
        {
            return await next(context);
        }
        catch (OperationCanceledException) when (!http.RequestAborted.IsCancellationRequested && patience.IsCancellationRequested)
        {
            metrics.GivenUp(route);
            http.Response.Headers.RetryAfter = RetryAfter;
            throw Refuse(FindingCodes.TookTooLong, Message.Of("http.took-too-long", ("seconds", seconds)));
        }
        finally
        {
            metrics.Computed(route, Stopwatch.GetElapsedTime(started));
        }
    }

    private static RefusedException Refuse(string code, Message message) =>
        new(new Finding(code, "", null, message, [Message.Of("http.try-again-later")]));
}
