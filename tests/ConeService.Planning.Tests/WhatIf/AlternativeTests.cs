using System.Text.Json;
using ConeService.Contract.Json;
using ConeService.Contract.Plans;
using ConeService.Planning.FirstPlan;
using ConeService.Planning.Judge;
using ConeService.Planning.Model;
using ConeService.Planning.Tests.Support;
using ConeService.Planning.WhatIf;

namespace ConeService.Planning.Tests.WhatIf;

/// <summary>Changed questions are planned, and what is told of them is what those plans are.</summary>
public sealed class AlternativeTests
{
    // Two starts for what needs three firings: some are undone, and late.
    private static readonly PlanRequest Tight = Studio.Request(
        Studio.Mug("a", 400, due: "2026-12-10T12:00", bisqued: true), Studio.Mug("b", 10)) with
    {
        Kilns = [Studio.Kiln() with { Starts = ["2026-12-02T09:00", "2026-12-04T09:00"] }],
    };

    [Fact]
    public void Each_alternative_is_a_sound_plan_of_its_changed_question_and_no_worse_than_the_plan()
    {
        var problem = Studio.Digest(Tight).Problem;
        var plan = FirstPlanner.Of(problem);
        var all = new Alternatives(problem, plan, 0, 50, 1).All();

        Assert.Equal([WhatIfChange.KilnDay, WhatIfChange.Shelves, WhatIfChange.DueDate], all.Select(a => a.Change));
        foreach (var alternative in all)
        {
            Assert.Empty(DraftJudge.Faults(alternative.Problem, alternative.Plan));
            Assert.True(alternative.Plan.Score <= plan.Score);
            var (then, now) = (alternative.Plan.Score, plan.Score);
            Assert.Equal((then.Late, then.Undone, then.Cost) != (now.Late, now.Undone, now.Cost), alternative.IsBetter);
        }

        // One firing more holds more of what is late.
        Assert.True(all[0].IsBetter);
        Assert.True(all[0].Plan.Score.Late < plan.Score.Late);
        Assert.Single(all[0].Plan.Firings, f => f.Kiln == problem.Kilns.Count);
    }

    /// <summary>In the sample studio all is in time; a firing more saves nothing but waiting, and must not be called better.</summary>
    [Fact]
    public async Task Less_waiting_alone_is_not_called_better()
    {
        var request = JsonSerializer.Deserialize<PlanRequest>(
            File.ReadAllText(Path.Combine(Repository.Root, "samples", "studio", "request.json")), ConeJson.Options)!;
        var plan = await new Planner(Studio.Reference).PlanAsync(request, new(Seconds: 0, Steps: 100, Workers: 1, Solver: false));

        Assert.NotEmpty(plan.WhatIf);
        Assert.All(plan.WhatIf, w => Assert.True(
            !w.IsBetter || w.Late < plan.Summary.Late || w.UndoneFirings < plan.Summary.UndoneFirings || w.Cost < plan.Summary.Cost,
            w.Message.ToString()));
    }

    [Fact]
    public void Late_pieces_are_counted_one_by_one()
    {
        var problem = Studio.Digest(Tight).Problem;

        // Nothing fired: all that has a date is late.
        Assert.Equal(400, Scorer.LatePieces(problem, []));
    }

    [Fact]
    public async Task A_plan_tells_what_one_change_would_bring()
    {
        var plan = await new Planner(Studio.Reference).PlanAsync(Tight, new(Seconds: 0, Steps: 100, Workers: 1));

        var (day, shelves, date) = (plan.WhatIf[0], plan.WhatIf[1], plan.WhatIf[2]);
        Assert.True(day.IsBetter);
        Assert.True(day.Late < plan.Summary.Late);
        Assert.Equal("one", day.KilnId);
        Assert.Contains(day.LoadingFrom!.Value,
            Tight.Kilns![0]!.Starts!.Select(s => DateTimeOffset.Parse(s + "+01:00", null).AddHours(-1)));
        Assert.Contains($"{day.Late} pieces late", day.Message.ToString(), StringComparison.Ordinal);
        Assert.Equal((WhatIfChange.Shelves, "one"), (shelves.Change, shelves.KilnId));
        Assert.Equal(["a"], date.Pieces);
        Assert.Equal(TimeSpan.FromDays(7), date.MovedTo - date.Due);
        Assert.All(plan.WhatIf.Where(w => !w.IsBetter),
            w => Assert.Contains("no better plan was found", w.Message.ToString(), StringComparison.Ordinal));
    }
}
