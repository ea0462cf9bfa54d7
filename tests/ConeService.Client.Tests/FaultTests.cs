using ConeService.Client.Tests.Support;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Loads;
using ConeService.Contract.Problems;

namespace ConeService.Client.Tests;

/// <summary>What goes wrong on the way, by a proxy that lets it.</summary>
public sealed class FaultTests(RunningService service)
{
    private static readonly Cone Six = Cone.Parse("6");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static LoadRequest Load => Vectors.Example<LoadRequest>("checkLoad.minimal");

    [Theory]
    [InlineData(nameof(Fault.Refused), AwayReason.NotReached)]
    [InlineData(nameof(Fault.Slow), AwayReason.TimedOut)]
    [InlineData(nameof(Fault.Cut), AwayReason.NotReached)]
    [InlineData(nameof(Fault.Status500), AwayReason.Failed)]
    [InlineData(nameof(Fault.WrongJson), AwayReason.Unreadable)]
    [InlineData(nameof(Fault.HalfJson), AwayReason.Unreadable)]
    [InlineData(nameof(Fault.Status429), AwayReason.TooManyRequests)]
    public async Task Local_data_answers_for_a_service_that_is_away_and_says_why(string fault, AwayReason because)
    {
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => Enum.Parse<Fault>(fault));
        await using var client = Client(proxy.Address, attempt: fault == nameof(Fault.Slow) ? 0.3 : 30);

        var answer = await client.Cones.EndPointAsync(Six, cancel: Cancel);

        Assert.Equal((AnswerOrigin.Local, because), (answer.Origin, answer.Because));
        Assert.Equal((await TestClients.Local.Cones.EndPointAsync(Six, cancel: Cancel)).Json.ToArray(), answer.Json.ToArray());
        Assert.Equal(3, proxy.Asked);
    }

    [Theory]
    [InlineData(nameof(Fault.Refused))]
    [InlineData(nameof(Fault.Cut))]
    [InlineData(nameof(Fault.Status500))]
    [InlineData(nameof(Fault.WrongJson))]
    public async Task What_goes_wrong_once_or_twice_is_asked_again(string fault)
    {
        var asked = 0;
        await using var proxy = await FaultProxy.StartAsync(
            service.Address, () => Interlocked.Increment(ref asked) <= 2 ? Enum.Parse<Fault>(fault) : Fault.None);
        await using var client = Client(proxy.Address);

        var answer = await client.Loads.CheckAsync(Load, cancel: Cancel);

        Assert.Equal((AnswerOrigin.Service, AwayReason.None), (answer.Origin, answer.Because));
    }

    [Fact]
    public async Task A_refusal_of_the_service_is_not_answered_locally()
    {
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => Fault.None);
        await using var client = Client(proxy.Address);

        var refused = await Assert.ThrowsAsync<RefusedException>(() => client.Materials.DescribeBodyAsync("no-such-body", Cancel));

        Assert.Equal(FindingCodes.NotFound, refused.Findings[0].Code);
        Assert.Equal(1, proxy.Asked);
    }

    [Fact]
    public async Task A_status_of_4xx_that_the_service_did_not_give_is_not_answered_locally()
    {
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => Fault.Foreign404);
        await using var client = Client(proxy.Address);

        var away = await Assert.ThrowsAsync<ConeServiceAwayException>(() => client.Cones.ListAsync(Cancel));

        Assert.Contains("404", away.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_route_that_the_service_lacks_is_named()
    {
        await using var client = Client(new Uri(service.Address, "/older"));

        var missing = await Assert.ThrowsAsync<RouteMissingException>(() => client.Cones.ListAsync(Cancel));

        Assert.Equal("GET /v1/cones", missing.Route);
    }

    [Fact]
    public async Task A_question_that_can_be_refused_here_is_not_sent()
    {
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => Fault.None);
        await using var client = Client(proxy.Address);

        await Assert.ThrowsAsync<RefusedException>(() => client.Conversions.ConvertAsync(new([]), Cancel));

        Assert.Equal(0, proxy.Asked);
    }

    [Fact]
    public async Task A_load_is_not_judged_here_before_the_service_told_its_data()
    {
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => Fault.Status500);
        await using var client = Client(proxy.Address);

        var away = await Assert.ThrowsAsync<ConeServiceAwayException>(() => client.Loads.CheckAsync(Load, cancel: Cancel));

        Assert.Equal(AwayReason.Failed, away.Because);
    }

    [Fact]
    public async Task A_load_is_judged_here_when_the_service_that_went_away_uses_the_same_data()
    {
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => Fault.None);
        await using var client = Client(proxy.Address);
        var before = await client.Loads.CheckAsync(Load, cancel: Cancel);
        await proxy.StopAsync();

        var after = await client.Loads.CheckAsync(Load, cancel: Cancel);

        Assert.Equal((AnswerOrigin.Local, AwayReason.NotReached), (after.Origin, after.Because));
        Assert.Equal(before.Json.ToArray(), after.Json.ToArray());
    }

    [Fact]
    public async Task A_load_is_not_judged_here_by_clays_that_the_service_does_not_know()
    {
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => Fault.None);
        await using var client = Client(proxy.Address, overlay: Path.Combine(AppContext.BaseDirectory, "harbour-yard-overlay"));
        await client.Loads.CheckAsync(Load, cancel: Cancel);
        await proxy.StopAsync();

        var away = await Assert.ThrowsAsync<ConeServiceAwayException>(() => client.Loads.CheckAsync(Load, cancel: Cancel));

        Assert.Contains("other data", away.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_may_be_kept_is_asked_once()
    {
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => Fault.None);
        await using var client = Client(proxy.Address);

        var first = await client.Materials.ListGlazesAsync(cancel: Cancel);
        var second = await client.Materials.ListGlazesAsync(cancel: Cancel);

        Assert.Equal((AnswerOrigin.Service, AnswerOrigin.Cache), (first.Origin, second.Origin));
        Assert.Equal(first.Json.ToArray(), second.Json.ToArray());
        Assert.Equal(1, proxy.Asked);
    }

    /// <summary>CONESERVICE_CALLS=10000 is the long form.</summary>
    [Fact]
    public async Task Of_many_calls_of_which_a_third_fails_none_is_wrong_and_none_is_lost()
    {
        var calls = int.Parse(
            Environment.GetEnvironmentVariable("CONESERVICE_CALLS") ?? "300", System.Globalization.CultureInfo.InvariantCulture);
        Fault[] faults = [Fault.Refused, Fault.Slow, Fault.Cut, Fault.Status500, Fault.WrongJson];
        var asked = 0;
        // Three of ten requests fail, in turn in each of the ways.
        await using var proxy = await FaultProxy.StartAsync(service.Address, () =>
        {
            var number = Interlocked.Increment(ref asked);
            return number % 10 is 1 or 4 or 7 ? faults[number % faults.Length] : Fault.None;
        });
        await using var client = new TestClient(o => (o.Service, o.CachedAnswers) = (proxy.Address, 0));
        var right = (await TestClients.Local.Cones.EndPointAsync(Six, cancel: Cancel)).Json.ToArray();
        // Opening the data is not what is measured.
        await client.Cones.EndPointAsync(Six, cancel: Cancel);
        await client.Loads.CheckAsync(Load, cancel: Cancel);
        var outcomes = new System.Collections.Concurrent.ConcurrentBag<(string What, TimeSpan Took)>();

        var sixteen = new ParallelOptions { MaxDegreeOfParallelism = 16, CancellationToken = Cancel };
        await Parallel.ForAsync(0, calls, sixteen, async (i, cancel) =>
        {
            var began = TimeProvider.System.GetTimestamp();
            string what;
            try
            {
                if (i % 4 == 3)
                {
                    await client.Materials.DescribeBodyAsync("no-such-body", cancel);
                    what = "wrong";
                }
                else
                {
                    var answer = await client.Cones.EndPointAsync(Six, cancel: cancel);
                    what = answer.Json.Span.SequenceEqual(right) ? answer.Origin.ToString() : "wrong";
                }
            }
            catch (RefusedException refused)
            {
                what = i % 4 == 3 && refused.Findings[0].Code == FindingCodes.NotFound ? "refused" : "wrong";
            }

            outcomes.Add((what, TimeProvider.System.GetElapsedTime(began)));
        });

        var p99 = outcomes.Select(o => o.Took).Order().ElementAt((int)(calls * 0.99));
        TestContext.Current.SendDiagnosticMessage(
            $"p99 {p99.TotalSeconds:0.00} s; {string.Join(", ", outcomes.CountBy(o => o.What).Select(c => $"{c.Key} {c.Value}"))}");
        Assert.Equal(calls, outcomes.Count);
        Assert.DoesNotContain(outcomes, o => o.What == "wrong");
        Assert.Equal(calls / 4, outcomes.Count(o => o.What == "refused"));
        Assert.True(p99 < new ConeClientOptions().TotalTimeout, $"The slowest hundredth took {p99}.");
    }

    private static TestClient Client(Uri address, double attempt = 30, string? overlay = null) => new(o =>
    {
        o.Service = address;
        o.AttemptTimeout = TimeSpan.FromSeconds(attempt);
        o.TotalTimeout = TimeSpan.FromSeconds(attempt * 4);
        if (overlay is not null) o.Overlays.Add(overlay);
    });
}
