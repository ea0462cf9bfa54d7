using ConeService.Contract.Plans;
using ConeService.Planning.FirstPlan;
using ConeService.Planning.Judge;
using ConeService.Planning.Model;
using ConeService.Planning.Search;
using ConeService.Planning.Tests.Support;

namespace ConeService.Planning.Tests.Search;

/// <summary>Plans by rules of thumb and by search: judged, and never worse than the keeper's.</summary>
public sealed class PlanTests
{
    private static readonly Problem Course = Studio.Digest(Studio.Request(
        Studio.Mug("a", 60, due: "2026-12-13T12:00"), Studio.Mug("b", 50), Studio.Mug("c", 40, bisqued: true))).Problem;

    [Fact]
    public void Every_rule_of_thumb_makes_a_sound_plan()
    {
        foreach (var rule in RuleOfThumb.All) Assert.Empty(DraftJudge.Faults(Course, rule.Plan(Course)));
    }

    [Fact]
    public void A_first_plan_is_sound_and_no_worse_than_the_keepers()
    {
        var first = FirstPlanner.Of(Course);

        Assert.Empty(DraftJudge.Faults(Course, first));
        Assert.True(first.Score <= RuleOfThumb.Keeper.Plan(Course).Score);
        Assert.Equal(0, first.Score.Late);
    }

    [Fact]
    public void A_search_betters_it_or_not_and_gives_the_same_plan_again()
    {
        var first = FirstPlanner.Of(Course);
        Draft Search() => new CalendarSearch(Course, 7).Search(first, s => s / 500.0);
        var (one, other) = (Search(), Search());

        Assert.Empty(DraftJudge.Faults(Course, one));
        Assert.True(one.Score <= first.Score);
        Assert.Equal(one.Score, other.Score);
        Assert.Equal(
            one.Firings.Select(f => (f.Kiln, f.Start, f.Type, string.Join(' ', f.Contents))),
            other.Firings.Select(f => (f.Kiln, f.Start, f.Type, string.Join(' ', f.Contents))));
    }

    [Fact]
    public void A_pin_is_kept_by_every_plan()
    {
        var problem = Studio.Digest(Studio.Request(Studio.Mug("a", 20), Studio.Mug("b", 20, due: "2026-12-10T00:00", bisqued: true)) with
        {
            Firings = [new GivenFiring("one", "2026-12-03T09:30", "bisque", "06", "oxidation", true, [new("a", 5)])],
        }).Problem;
        var first = FirstPlanner.Of(problem);
        var searched = new CalendarSearch(problem, 3).Search(first, s => s / 200.0);

        Assert.Empty(DraftJudge.Faults(problem, first));
        Assert.Empty(DraftJudge.Faults(problem, searched));
        Assert.Contains(searched.Firings, f => f.IsPinned);
    }
}
