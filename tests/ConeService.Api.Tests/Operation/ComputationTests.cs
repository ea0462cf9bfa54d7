using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Api.Http.Reach;
using ConeService.Api.Operation.Signals;
using ConeService.Api.Operation.Work;
using ConeService.Api.Tests.Support;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Firing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace ConeService.Api.Tests.Operation;

/// <summary>Only so much is computed at a time, and none of it for ever.</summary>
public class ComputationTests
{
    private static readonly TaskCompletionSource Held = new();
    private static readonly TaskCompletionSource Go = new();

    [Fact]
    public async Task One_too_many_is_told_to_come_again_and_the_rest_is_answered_meanwhile()
    {
        var (started, go) = (new TaskCompletionSource(), new TaskCompletionSource());
        await using var app = await Host(
            async () =>
            {
                started.TrySetResult();
                await go.Task;
                return "done";
            },
            ("AtOnce", "1"), ("Waiting", "1"));
        using var client = new HttpClient { BaseAddress = new(app.Urls.First()) };
        var first = Post(client);
        await started.Task;
        var second = Post(client);
        // Which of the two waits and which is turned away is not ours to say; one of them is.
        var third = Post(client);
        using (var turnedAway = await await Task.WhenAny(second, third))
        {
            var problem = await Support.Api.Read(turnedAway, 503);
            Assert.EndsWith("/problems/too-busy", problem.GetProperty("type").GetString(), StringComparison.Ordinal);
            Assert.Equal("1", Assert.Single(turnedAway.Headers.GetValues("Retry-After")));
        }

        Assert.Equal("live", await client.GetStringAsync(new Uri("/live", UriKind.Relative), Support.Api.Cancel));
        go.SetResult();
        foreach (var response in await Task.WhenAll(first, second, third))
        {
            if (response.IsSuccessStatusCode) Assert.Equal("done", await response.Content.ReadAsStringAsync(Support.Api.Cancel));
            response.Dispose();
        }
    }

    // A fit can be asked by GET too.
    [Fact]
    public async Task What_computes_for_a_get_is_bounded_as_well()
    {
        await using var app = await Host(() => Task.FromResult("posted"), ("AtOnce", "1"), ("Waiting", "0"));
        using var client = new HttpClient { BaseAddress = new(app.Urls.First()) };
        using var first = client.GetAsync(new Uri("/held", UriKind.Relative), Support.Api.Cancel);
        await Held.Task;
        using (var turnedAway = await client.GetAsync(new Uri("/held", UriKind.Relative), Support.Api.Cancel))
            Assert.Equal(503, (int)turnedAway.StatusCode);
        Go.SetResult();
        Assert.True((await first).IsSuccessStatusCode);
    }

    [Fact]
    public async Task One_that_takes_too_long_is_given_up()
    {
        await using var app = await Host(
            () =>
            {
                // As a computation does: it goes on until nobody waits.
                foreach (var _ in Enumerable.Repeat(0, int.MaxValue).Patiently()) Thread.Yield();
                return Task.FromResult("never");
            },
            ("SecondsAtMost", "1"));
        using var client = new HttpClient { BaseAddress = new(app.Urls.First()) };
        using var response = await Post(client);
        var problem = await Support.Api.Read(response, 503);
        Assert.EndsWith("/problems/took-too-long", problem.GetProperty("type").GetString(), StringComparison.Ordinal);
        Assert.Contains("after 1 seconds", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.Equal("1", Assert.Single(response.Headers.GetValues("Retry-After")));
    }

    [Fact]
    public async Task One_whose_caller_left_ends()
    {
        var (started, ended) = (new TaskCompletionSource(), new TaskCompletionSource());
        await using var app = await Host(() =>
        {
            started.TrySetResult();
            try
            {
                foreach (var _ in Enumerable.Repeat(0, int.MaxValue).Patiently()) Thread.Yield();
            }
            catch (OperationCanceledException)
            {
                ended.TrySetResult();
                throw;
            }

            return Task.FromResult("never");
        });
        using var client = new HttpClient { BaseAddress = new(app.Urls.First()) };
        using var leave = new CancellationTokenSource();
        var post = client.PostAsync(new Uri("/compute", UriKind.Relative), null, leave.Token);
        await started.Task;
        await leave.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => post);
        await ended.Task.WaitAsync(TimeSpan.FromSeconds(15), Support.Api.Cancel);
    }

    [Fact]
    public async Task A_body_that_stalled_is_told_so()
    {
        await using var app = await Host(() => throw new BadHttpRequestException("stalled", StatusCodes.Status408RequestTimeout));
        using var client = new HttpClient { BaseAddress = new(app.Urls.First()) };
        using var response = await Post(client);
        await Problems.Findings(response, 408, "body-stalled");
    }

    [Fact]
    public async Task A_refusal_is_no_computation_that_took_too_long()
    {
        await using var app = await Host(() => throw new RefusedException(
            new Finding(FindingCodes.ConeZero, "cone", "0", Message.Of("http.one-value"), [])));
        using var client = new HttpClient { BaseAddress = new(app.Urls.First()) };
        using var response = await Post(client);
        await Problems.Findings(response, 400, "cone-zero");
    }

    private static Task<HttpResponseMessage> Post(HttpClient client) =>
        client.PostAsync(new Uri("/compute", UriKind.Relative), null, Support.Api.Cancel);

    private static async Task<WebApplication> Host(Func<Task<string>> compute, params (string Name, string Value)[] settings)
    {
        var builder = WebApplication.CreateSlimBuilder();
        foreach (var (name, value) in settings) builder.Configuration["ConeService:Computations:" + name] = value;
        builder.Logging.ClearProviders();
        builder.Services.AddSingleton<AcceptedTypes>();
        builder.Services.AddSingleton<NearPaths>();
        builder.Services.AddSingleton<ServiceAddress>();
        builder.Services.AddSingleton<ServiceMetrics>();
        builder.Services.AddSingleton<Computations>();
        var app = builder.Build();
        app.Urls.Add("http://127.0.0.1:0");
        app.UseMiddleware<ProblemMiddleware>();
        app.MapGet("/live", () => "live");
        Computations.BoundPosts(app.MapGroup("")).MapPost("/compute", compute);
        Computations.Bound(app.MapGet("/held", async () =>
        {
            Held.TrySetResult();
            await Go.Task;
            return "got";
        }));
        await app.StartAsync(Support.Api.Cancel);
        return app;
    }
}
