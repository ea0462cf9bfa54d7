using System.Collections.Concurrent;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace ConeService.Client.Tests.Support;

/// <summary>What goes wrong between a caller and the service.</summary>
internal enum Fault
{
    None,

    /// <summary>The connection is broken before an answer begins.</summary>
    Refused,

    /// <summary>The answer comes too late.</summary>
    Slow,

    /// <summary>The answer comes after <see cref="FaultProxy.Lateness"/>.</summary>
    Late,

    /// <summary>The answer breaks off in the middle.</summary>
    Cut,

    /// <summary>500, with a page of somebody else.</summary>
    Status500,

    /// <summary>200 with JSON that is no answer.</summary>
    WrongJson,

    /// <summary>200 with half of a JSON, which the length agrees with.</summary>
    HalfJson,

    /// <summary>429 of a limit in front.</summary>
    Status429,

    /// <summary>503 of a service all of whose places are taken.</summary>
    Status503,

    /// <summary>404 with a page of somebody else.</summary>
    Foreign404,
}

/// <summary>A proxy in front of the service that lets things go wrong as told.</summary>
internal sealed class FaultProxy : IAsyncDisposable
{
    private readonly WebApplication app;
    private readonly HttpClient behind;
    private readonly Func<Fault> next;
    private int asked;

    private FaultProxy(Uri service, Func<Fault> next)
    {
        this.next = next;
        behind = new HttpClient { BaseAddress = service };
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        app = builder.Build();
        app.Run(HandleAsync);
    }

    /// <summary>Its root.</summary>
    public Uri Address => new(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());

    /// <summary>How many requests came.</summary>
    public int Asked => asked;

    /// <summary>How long a slow answer takes.</summary>
    public TimeSpan Slowness { get; init; } = TimeSpan.FromSeconds(30);

    /// <summary>How long a late answer takes.</summary>
    public TimeSpan Lateness { get; init; } = TimeSpan.FromSeconds(1.5);

    /// <summary>Address and body of each request, in the order they came.</summary>
    public ConcurrentQueue<(string Address, string Body)> Sent { get; } = new();

    /// <summary>Starts one.</summary>
    /// <param name="service">The service behind it.</param>
    /// <param name="next">What goes wrong with the next request.</param>
    public static async Task<FaultProxy> StartAsync(Uri service, Func<Fault> next)
    {
        var proxy = new FaultProxy(service, next);
        await proxy.app.StartAsync();
        return proxy;
    }

    /// <summary>Stops it as a crash does: who asks next is refused.</summary>
    public Task StopAsync() => app.StopAsync();

    public async ValueTask DisposeAsync()
    {
        await app.DisposeAsync();
        behind.Dispose();
    }

    private async Task HandleAsync(HttpContext context)
    {
        Interlocked.Increment(ref asked);
        context.Request.EnableBuffering();
        using (var reader = new StreamReader(context.Request.Body, leaveOpen: true))
            Sent.Enqueue((context.Request.Path + context.Request.QueryString, await reader.ReadToEndAsync()));
        context.Request.Body.Position = 0;
        switch (next())
        {
            case Fault.Refused:
                context.Abort();
                break;
            case Fault.Slow:
                await Task.Delay(Slowness, context.RequestAborted).ContinueWith(_ => { }, TaskScheduler.Default);
                context.Abort();
                break;
            case Fault.Late:
                await Task.Delay(Lateness, context.RequestAborted);
                await context.Response.Body.WriteAsync(await ForwardAsync(context));
                break;
            case Fault.Cut:
                var whole = await ForwardAsync(context);
                await context.Response.Body.WriteAsync(whole.AsMemory(0, whole.Length / 2));
                await context.Response.Body.FlushAsync();
                context.Abort();
                break;
            case Fault.HalfJson:
                var half = await ForwardAsync(context);
                context.Response.ContentLength = half.Length / 2;
                await context.Response.Body.WriteAsync(half.AsMemory(0, half.Length / 2));
                break;
            case Fault.Status500:
                await SayAsync(context, 500, "text/html", "<h1>Broken</h1>");
                break;
            case Fault.WrongJson:
                await SayAsync(context, 200, "application/json", """{"hello":"world"}""");
                break;
            case Fault.Status429:
                context.Response.Headers.RetryAfter = "3600";
                await SayAsync(context, 429, "text/plain", "Slower.");
                break;
            case Fault.Status503:
                context.Response.Headers.RetryAfter = "1";
                await SayAsync(context, 503, "application/problem+json", "{}");
                break;
            case Fault.Foreign404:
                await SayAsync(context, 404, "text/html", "<h1>Nothing here</h1>");
                break;
            default:
                await context.Response.Body.WriteAsync(await ForwardAsync(context));
                break;
        }
    }

    private static Task SayAsync(HttpContext context, int status, string type, string text)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = type;
        return context.Response.WriteAsync(text);
    }

    private async Task<byte[]> ForwardAsync(HttpContext context)
    {
        var (from, to) = (context.Request, context.Response);
        using var request = new HttpRequestMessage(new HttpMethod(from.Method), from.Path + from.QueryString);
        if (from.ContentLength > 0)
        {
            request.Content = new StreamContent(from.Body);
            request.Content.Headers.TryAddWithoutValidation("Content-Type", from.ContentType);
        }

        request.Headers.TryAddWithoutValidation("Accept", from.Headers.Accept.ToString());
        using var response = await behind.SendAsync(request);
        var body = await response.Content.ReadAsByteArrayAsync();
        to.StatusCode = (int)response.StatusCode;
        to.ContentType = response.Content.Headers.ContentType?.ToString();
        if (response.Headers.CacheControl is { } control) to.Headers.CacheControl = control.ToString();
        to.ContentLength = body.Length;
        return body;
    }
}
