using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Planning.Tests.Support;

namespace ConeService.Planning.Tests;

/// <summary>Plans as callers get them, judged by themselves and by the load check.</summary>
public sealed class PlannerTests
{
    private static readonly PlanEffort Steps = new(Seconds: 0, Steps: 500, Workers: 1);
    private static readonly Planner Planner = new(Studio.Reference);

    private static readonly PlanRequest Course = Studio.Request(
        Studio.Mug("a", 60, due: "2026-12-13T12:00"), Studio.Mug("b", 50), Studio.Mug("c", 40, bisqued: true));

    [Fact]
    public async Task Every_firing_is_accepted_by_the_load_check_and_each_starts_from_a_schedule()
    {
        var menu = new MenuFiring[] { new("bisque", "06", "oxidation"), new("glaze", "6", "oxidation") };
        var request = Course with { Kilns = [Studio.Kiln() with { Firings = menu }] };
        var plan = await Planner.PlanAsync(request, Steps);

        Assert.NotEmpty(plan.Firings);
        Assert.Empty(PlanJudge.Faults(request, plan));
        foreach (var firing in plan.Firings)
        {
            var answer = Studio.Reference.Loads.Check(PlanJudge.Load(request, plan, firing));
            Assert.Equal(Verdict.Accept, answer.Verdict);
            Assert.NotNull(firing.Schedule);
            Assert.StartsWith($"/v1/schedules/{firing.Schedule}/fit?", firing.FittedSchedule!.Path, StringComparison.Ordinal);
        }

        Assert.Equal(["05", "06"], plan.Firings.SelectMany(f => f.WitnessCones).Intersect(["05", "06"]).Order());
        Assert.NotEmpty(plan.Cautions);
        // Hours and energy come from the fit of these two.
        Assert.Subset(plan.Sources.ToHashSet(), Studio.Reference.Dataset.ScheduleTemplates
            .Where(t => t.Id is "bisque-mixed-ware" or "mid-range-glaze").SelectMany(t => t.Sources).ToHashSet());
        Assert.NotEmpty(plan.Sources);
    }

    [Fact]
    public async Task The_same_steps_and_seed_give_the_same_plan()
    {
        var (one, other) = (await Planner.PlanAsync(Course, Steps), await Planner.PlanAsync(Course, Steps));

        string Json(FiringPlan p) => System.Text.Json.JsonSerializer.Serialize(p, Contract.Json.ConeJson.Options);
        Assert.Equal(Json(one), Json(other));
        Assert.Equal(0, one.Summary.Late);
    }

    [Fact]
    public async Task What_can_not_be_planned_is_named_with_its_reason_and_the_rest_is_planned()
    {
        var high = Studio.Mug("high", 2) with
        {
            Piece = new PieceRequest(
                "high", 2, "high-fire-porcelain", null, [new("celadon")], "bisqued", Size: new(100, 80), Use: "decorative"),
            Then = null,
        };
        var huge = Studio.Mug("huge", 1) with { Piece = Studio.Mug("huge", 1).Piece! with { Size = new(590, 80) } };
        var plan = await Planner.PlanAsync(Studio.Request(high, Studio.Mug("a", 1, due: "2026-12-12T00:00"), huge), Steps);

        Assert.Equal(
            [("high", 2, 1, WaitReason.NoFiringAccepts), ("huge", 1, 1, WaitReason.TooBigForKiln)],
            plan.Unplanned.Select(u => (u.Id, u.Count, u.Stage, u.Reason)));
        Assert.NotEmpty(plan.Unplanned[0].LoadReasons);
        Assert.Equal([1, 2], plan.Pieces[1].Firings.Select(f => f.Stage));
        Assert.NotNull(plan.Pieces[1].DoneAt);
        Assert.Null(plan.Pieces[0].DoneAt);
        Assert.Equal(3, plan.Summary.Undone);
    }

    [Fact]
    public async Task What_waits_and_what_is_left_says_why()
    {
        // Nothing has a date and nothing fills a kiln: a firing more would be too empty.
        var few = await Planner.PlanAsync(Studio.Request(Studio.Mug("a", 3)), Steps);
        Assert.Equal([WaitReason.AFiringMoreWouldCost], few.Unplanned.Select(u => u.Reason));
        Assert.Equal([WaitReason.AFiringMoreWouldCost], few.Pieces[0].Waits.SelectMany(w => w.Reasons));

        // Far more than two weeks of a kiln hold.
        var many = await Planner.PlanAsync(
            Studio.Request(Studio.Mug("a", 3000)) with { Kilns = [Studio.Kiln() with { Starts = ["2026-12-02T09:00"] }] }, Steps);
        Assert.Contains(many.Unplanned, u => u.Reason == WaitReason.NoRoom);
        Assert.Single(many.Firings);
    }

    [Fact]
    public async Task A_firing_that_stands_is_kept_and_a_former_plan_is_not_changed_for_nothing()
    {
        var before = await Planner.PlanAsync(Course, Steps);
        var again = await Planner.PlanAsync(Course with { Announced = [.. before.Firings.Select(PlanJudge.Given)] }, Steps);

        Assert.Equal(0, again.Summary.Changes);
        Assert.Equal(before.Firings.Select(f => (f.KilnId, f.Start, f.Cone)), again.Firings.Select(f => (f.KilnId, f.Start, f.Cone)));
        Assert.All(again.Firings, f => Assert.Equal(FiringReason.Announced, f.Why));

        var pinned = await Planner.PlanAsync(Course with { Firings = [PlanJudge.Given(before.Firings[0])] }, Steps);
        Assert.Contains(pinned.Firings, f => f.IsPinned && f.Start == before.Firings[0].Start && f.Why == FiringReason.Pinned);
        Assert.Equal(
            before.Firings[0].Layers.Sum(l => l.Pieces.Sum(p => p.Count)),
            pinned.Firings.First(f => f.IsPinned).Layers.Sum(l => l.Pieces.Sum(p => p.Count)));
    }

    [Fact]
    public async Task One_new_piece_moves_no_firing_that_need_not_move()
    {
        var before = await Planner.PlanAsync(Course, Steps);
        var after = await Planner.PlanAsync(
            Course with { Announced = [.. before.Firings.Select(PlanJudge.Given)], Pieces = [.. Course.Pieces!, Studio.Mug("new", 1)] },
                Steps);

        Assert.Equal(before.Firings.Select(f => f.Start), after.Firings.Select(f => f.Start));
        Assert.Equal(0, after.Summary.Changes);
    }

    [Fact]
    public async Task All_that_is_wrong_is_told_at_once_in_sentences()
    {
        var late = Studio.Mug("a", 1, due: "2026-12-02T00:00") with { Ready = "2026-12-03T00:00" };
        var refused = await Assert.ThrowsAsync<RefusedException>(() => Planner.PlanAsync(
            Studio.Request(late, Studio.Mug("a", 1)) with
            {
                Objective = new(Cost: "beauty", Tariff: new(Currency: "euro"), MinimumFillPercent: 101),
                Firings = [new("one", "2026-12-02T08:00", "raku", "6", "oxidation")],
            },
            Steps));

        Assert.Equal(
            [
                "/firings/0", "/objective/cost", "/objective/minimumFillPercent", "/objective/tariff/currency",
                "/objective/tariff/perKilowattHour", "/pieces/0/due", "/pieces/1/piece/id",
            ],
            refused.Findings.Select(f => f.Pointer!).Order(StringComparer.Ordinal));
        Assert.All(refused.Findings, f => Assert.NotEmpty(f.Message.ToString()));
    }

    [Fact]
    public async Task Nobody_waiting_ends_the_search()
    {
        using var source = new CancellationTokenSource();
        await source.CancelAsync();
        Firing.Patience.Use(source.Token);

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => new Planner(Studio.Reference).PlanAsync(Course, new(Seconds: 30)));
    }
}
