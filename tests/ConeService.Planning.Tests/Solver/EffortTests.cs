using System.Diagnostics;
using ConeService.Contract.Plans;
using ConeService.Planning.Bounds;
using ConeService.Planning.FirstPlan;
using ConeService.Planning.Judge;
using ConeService.Planning.Model;
using ConeService.Planning.Solver;
using ConeService.Planning.Tests.Support;

namespace ConeService.Planning.Tests.Solver;

/// <summary>Search and solver beside each other: on time, cancelled soon, and without the solver where it shall not be.</summary>
public sealed class EffortTests
{
    private static readonly PlanRequest Course = Studio.Request(
        [.. Enumerable.Range(0, 30).Select(i =>
            Studio.Mug($"piece {i}", 1 + (i % 7), due: i % 3 == 0 ? $"2026-12-{8 + (i % 6):00}T12:00" : null, bisqued: i % 4 == 0))]);

    [Fact]
    public async Task Without_the_solver_a_plan_is_made_all_the_same()
    {
        var plan = await new Planner(Studio.Reference).PlanAsync(Course, new(Seconds: 0, Steps: 200, Workers: 1, Solver: false));

        Assert.NotEmpty(plan.Firings);
        Assert.DoesNotContain(plan.Warnings, w => w.Code == PlanWarningCodes.WithoutSolver);
    }

    [Fact]
    public async Task The_time_asked_for_is_kept()
    {
        var begun = Stopwatch.GetTimestamp();
        _ = await new Planner(Studio.Reference).PlanAsync(Studio.Sample, new(Seconds: 2));

        // A tenth more on a machine that does nothing else; bench/Planning measures it, this finds a search without an end.
        Assert.InRange(Stopwatch.GetElapsedTime(begun).TotalSeconds, 1, 30);
    }

    // The sample studio, whose bound no plan was seen to reach: a small backlog can be proven before anyone gives up waiting.
    [Fact]
    public async Task Nobody_waiting_ends_search_and_solver_soon()
    {
        using var source = new CancellationTokenSource();
        Firing.Patience.Use(source.Token);
        var cancelled = 0L;
        source.Token.Register(() => cancelled = Stopwatch.GetTimestamp());
        source.CancelAfter(TimeSpan.FromSeconds(1));

        await Assert.ThrowsAnyAsync<OperationCanceledException>(
            () => new Planner(Studio.Reference).PlanAsync(Studio.Sample, new(Seconds: 120)));

        // Half a second on a machine that does nothing else; far from the two minutes asked for on any.
        Assert.InRange(Stopwatch.GetElapsedTime(cancelled).TotalSeconds, 0, 30);
    }

    [Fact]
    public void Windows_better_a_plan_or_leave_it_and_every_plan_is_sound()
    {
        var problem = Studio.Digest(Course).Problem;
        var first = FirstPlanner.Of(problem);
        var windows = new PlanSolver(problem, 1).Windows();
        var (best, time) = (first, new SolverTime(double.PositiveInfinity, 1));
        for (var i = 0; i < 5; i++)
        {
            var next = windows.Better(best, AloneBounds.Of(problem), time);
            Assert.Empty(DraftJudge.Faults(problem, next));
            Assert.True(next.Score <= best.Score);
            best = next;
        }
    }

    [Fact]
    public void Kilns_alike_are_found_and_ordered()
    {
        var request = Course with { Kilns = [Studio.Kiln("one"), Studio.Kiln("two"), Studio.Kiln("three") with { LoadingMinutes = 30 }] };
        var problem = Studio.Digest(request).Problem;
        var start = problem.Kilns[0].Starts.Count - 1;
        var stage = Enumerable.Range(0, problem.Stages.Count).First(s => problem.Kilns[1].Types[0].Takes[s]);
        var plan = Draft.Of(problem, [new(1, start, 0, false, [new(stage, 1)])]);

        Assert.Equal([(0, 1)], Twins.Of(problem));
        Assert.Equal([0, 0, 2], Twins.Firsts(problem));
        Assert.Equal([0], Twins.Order(problem, plan).Firings.Select(f => f.Kiln));
    }
}
