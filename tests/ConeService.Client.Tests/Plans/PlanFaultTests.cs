using ConeService.Client.Tests.Support;
using ConeService.Contract.Schedules;

namespace ConeService.Client.Tests.Plans;

/// <summary>What goes wrong on the way to a plan, which nobody but the service makes.</summary>
public sealed class PlanFaultTests(RunningService service)
{
    private const string ServiceOnly = "Plans are made by the service only.";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(nameof(Fault.Refused), AwayReason.NotReached)]
    [InlineData(nameof(Fault.Slow), AwayReason.TimedOut)]
    [InlineData(nameof(Fault.Cut), AwayReason.NotReached)]
    [InlineData(nameof(Fault.Status500), AwayReason.Failed)]
    [InlineData(nameof(Fault.Status503), AwayReason.Failed)]
    [InlineData(nameof(Fault.WrongJson), AwayReason.Unreadable)]
    [InlineData(nameof(Fault.HalfJson), AwayReason.Unreadable)]
    [InlineData(nameof(Fault.Status429), AwayReason.TooManyRequests)]
    public async Task A_service_that_is_away_is_told_with_why_nobody_else_plans(string fault, AwayReason because)
    {
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => Enum.Parse<Fault>(fault));
        await using var client = Client(proxy.Address, attempt: fault == nameof(Fault.Slow) ? 0.2 : 60);

        var away = await Assert.ThrowsAsync<ConeServiceAwayException>(() => client.Plans.PlanAsync(PlanVectors.One, 0.5, Cancel));

        Assert.Equal(because, away.Because);
        Assert.EndsWith(ServiceOnly, away.Message, StringComparison.Ordinal);
        Assert.Equal(3, proxy.Asked);
    }

    [Fact]
    public async Task Without_the_address_of_a_service_nobody_plans()
    {
        var away = await Assert.ThrowsAsync<ConeServiceAwayException>(
            () => TestClients.Local.Plans.PlanAsync(PlanVectors.One, 0.5, Cancel));

        Assert.Equal(AwayReason.NoAddress, away.Because);
        Assert.EndsWith(ServiceOnly, away.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(nameof(Fault.Refused))]
    [InlineData(nameof(Fault.Cut))]
    [InlineData(nameof(Fault.WrongJson))]
    [InlineData(nameof(Fault.Status503))]
    public async Task What_goes_wrong_twice_is_asked_again(string fault)
    {
        var asked = 0;
        await using var proxy = await FaultProxy.StartAsync(
            service.Address, () => Interlocked.Increment(ref asked) <= 2 ? Enum.Parse<Fault>(fault) : Fault.None);
        await using var client = Client(proxy.Address, attempt: 60);

        var answer = await client.Plans.PlanAsync(PlanVectors.One, 0.5, Cancel);

        Assert.Equal((AnswerOrigin.Service, AwayReason.None), (answer.Origin, answer.Because));
    }

    [Fact]
    public async Task An_attempt_lasts_as_long_as_the_search_that_was_asked_for_and_the_usual_wait_besides()
    {
        // 0.2 s would not do for what takes a second and a half; thirty more do.
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => Fault.Late);
        await using var client = Client(proxy.Address, attempt: 0.2);

        var answer = await client.Plans.PlanAsync(PlanVectors.One, 30, Cancel);

        Assert.Equal(AnswerOrigin.Service, answer.Origin);
        Assert.Equal(1, proxy.Asked);
    }

    [Fact]
    public async Task Attempts_after_one_that_was_turned_away_have_their_whole_time()
    {
        var asked = 0;
        await using var proxy = await FaultProxy.StartAsync(
            service.Address, () => Interlocked.Increment(ref asked) == 1 ? Fault.Status503 : Fault.Late);
        await using var client = Client(proxy.Address, attempt: 0.2);

        var answer = await client.Plans.PlanAsync(PlanVectors.One, 30, Cancel);

        Assert.Equal(AnswerOrigin.Service, answer.Origin);
        Assert.Equal(2, proxy.Asked);
    }

    [Fact]
    public async Task A_service_whose_places_are_taken_is_left_alone_for_as_long_as_it_says()
    {
        List<long> asked = [];
        await using var proxy = await FaultProxy.StartAsync(service.Address, () =>
        {
            asked.Add(TimeProvider.System.GetTimestamp());
            return asked.Count == 1 ? Fault.Status503 : Fault.None;
        });
        await using var client = Client(proxy.Address, attempt: 60);

        await client.Plans.PlanAsync(PlanVectors.One, 0.5, Cancel);

        // It says a second; other questions are asked again after some tenths of one. A slow machine only makes it longer.
        Assert.Equal(2, asked.Count);
        Assert.True(TimeProvider.System.GetElapsedTime(asked[0], asked[1]) > TimeSpan.FromSeconds(0.9));
    }

    [Fact]
    public async Task Plans_that_fail_keep_nobody_from_asking_for_something_else()
    {
        var fault = Fault.Status500;
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => fault);
        await using var client = Client(proxy.Address, attempt: 60);
        // Twenty of which half fail are what it takes to ask no more for five seconds.
        await Task.WhenAll(Enumerable.Range(0, 10).Select(_ => Assert.ThrowsAsync<ConeServiceAwayException>(
            () => client.Plans.PlanAsync(PlanVectors.One, 0.5, Cancel))));
        fault = Fault.None;

        var answer = await client.Schedules.FitAsync("mid-range-glaze", Vectors.Example<FitRequest>("fitSchedule.minimal"), Cancel);

        Assert.Equal(AnswerOrigin.Service, answer.Origin);
    }

    [Fact]
    public async Task The_wait_of_other_questions_is_not_that_of_a_plan()
    {
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => Fault.Slow);
        await using var client = Client(proxy.Address, attempt: 0.2);

        var answer = await client.Schedules.FitAsync("mid-range-glaze", Vectors.Example<FitRequest>("fitSchedule.minimal"), Cancel);

        Assert.Equal((AnswerOrigin.Local, AwayReason.TimedOut), (answer.Origin, answer.Because));
    }

    [Fact]
    public async Task Whoever_asked_may_end_the_wait()
    {
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => Fault.Slow);
        await using var client = Client(proxy.Address, attempt: 60);
        using var ended = CancellationTokenSource.CreateLinkedTokenSource(Cancel);
        ended.CancelAfter(TimeSpan.FromSeconds(0.3));

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => client.Plans.PlanAsync(PlanVectors.One, 30, ended.Token));
    }

    [Fact]
    public async Task A_service_from_before_plans_is_named()
    {
        await using var client = Client(new Uri(service.Address, "/older"), attempt: 60);

        var missing = await Assert.ThrowsAsync<RouteMissingException>(() => client.Plans.PlanAsync(PlanVectors.One, 0.5, Cancel));

        Assert.Equal("POST /v1/plans", missing.Route);
        Assert.Contains("older than this client", missing.Message, StringComparison.Ordinal);
    }

    private static TestClient Client(Uri address, double attempt) => new(o =>
    {
        o.Service = address;
        (o.LongAttemptTimeout, o.LongTotalTimeout) = (TimeSpan.FromSeconds(attempt), TimeSpan.FromSeconds(attempt * 4));
    });
}
