using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Planning.Tests.Support;

namespace ConeService.Planning.Tests;

/// <summary>samples/studio: two electric kilns and a gas kiln, three courses, 120 pieces, four weeks.</summary>
public sealed class SampleStudioTests
{
    private static readonly PlanRequest Sample = Studio.Sample;

    [Fact]
    public async Task Every_piece_is_planned_in_time_every_firing_accepted_and_started_from_a_fitted_schedule()
    {
        var plan = await new Planner(Studio.Reference).PlanAsync(Sample, new(Seconds: 0, Steps: 600, Workers: 1));

        Assert.Equal(120, plan.Pieces.Sum(p => p.Count));
        Assert.Empty(plan.Unplanned);
        Assert.Equal((0, 0), (plan.Summary.Late, plan.Summary.Undone));
        Assert.Empty(PlanJudge.Faults(Sample, plan));
        Assert.Equal(["Amsel", "Drossel", "Storch"], plan.Firings.Select(f => f.KilnId).Distinct().Order());
        foreach (var firing in plan.Firings)
        {
            Assert.Equal(Verdict.Accept, Studio.Reference.Loads.Check(PlanJudge.Load(Sample, plan, firing)).Verdict);
            Assert.StartsWith($"/v1/schedules/{firing.Schedule}/fit?", firing.FittedSchedule!.Path, StringComparison.Ordinal);
        }
    }

    // Asked for five seconds; the bound is generous, for whatever else the machine does.
    [Fact]
    public async Task It_is_planned_within_the_time_asked_for()
    {
        var begun = System.Diagnostics.Stopwatch.GetTimestamp();
        var plan = await new Planner(Studio.Reference).PlanAsync(Sample, new(Seconds: 5));

        Assert.Equal((0, 0), (plan.Summary.Late, plan.Summary.Undone));
        Assert.InRange(System.Diagnostics.Stopwatch.GetElapsedTime(begun).TotalSeconds, 0, 30);
    }
}
