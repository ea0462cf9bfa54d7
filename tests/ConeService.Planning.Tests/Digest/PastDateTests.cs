using ConeService.Planning.Tests.Support;

namespace ConeService.Planning.Tests.Digest;

/// <summary>A date that is past when the plan is made.</summary>
public sealed class PastDateTests
{
    [Fact]
    public async Task A_piece_past_its_date_is_planned_and_late()
    {
        var plan = await new Planner(Studio.Reference).PlanAsync(
            Studio.Request(Studio.Mug("a", 2, due: "2026-11-20T12:00", bisqued: true)), new(Seconds: 0, Steps: 50, Workers: 1));

        Assert.Equal(2, plan.Summary.Late);
        Assert.Equal(0, plan.Summary.Undone);
        Assert.Equal(plan.Summary.LateBound, plan.Summary.LateWeight);
        Assert.NotNull(plan.Pieces[0].DoneAt);
    }

    [Fact]
    public void A_date_before_its_own_ready_is_a_slip_wherever_both_lie()
    {
        var slip = Studio.Mug("a", 1, due: "2026-11-20T12:00") with { Ready = "2026-11-21T12:00" };

        Assert.Equal(["/pieces/0/due due-before-ready"], Studio.Findings(Studio.Request(slip)));
    }
}
