using ConeService.Contract.Plans;
using ConeService.Planning.Bounds;
using ConeService.Planning.Model;
using ConeService.Planning.Search;
using ConeService.Planning.Tests.Support;

namespace ConeService.Planning.Tests.Bounds;

/// <summary>Bounds of questions that are too large for every opening to be listed.</summary>
public sealed class EarliestUnloadingTests
{
    // Against each start looked at by itself, and against the list of openings, which knows more and so is never sooner.
    [Fact]
    public void A_piece_alone_comes_out_of_the_first_firing_that_takes_it_and_no_sooner_than_the_list_of_openings_has_it()
    {
        var problem = Studio.Digest(Studio.Sample).Problem;
        var (quick, listed) = (new EarliestUnloading(problem), new Chances(problem));
        var moments = new[] { -Problem.Day, 0, 1, Problem.Day, 5 * Problem.Day, 13 * Problem.Day, problem.Horizon }
            .Concat(problem.Kilns.SelectMany(k => new[] { k.LoadAt(0), k.LoadAt(k.Starts.Count / 2) }));
        foreach (var ready in moments)
        {
            for (var stage = 0; stage < problem.Stages.Count; stage++)
            {
                var expected = int.MaxValue;
                foreach (var kiln in problem.Kilns.Where(k => k.Slots[stage].Share > 0))
                {
                    for (var i = 0; i < kiln.Starts.Count; i++)
                    {
                        for (var t = 0; t < kiln.Types.Count; t++)
                        {
                            if (kiln.Types[t].Takes[stage] && kiln.LoadAt(i) >= ready && kiln.EndOf(i, t) is var end && end >= 0)
                                expected = Math.Min(expected, end);
                        }
                    }
                }

                Assert.Equal(expected, quick.Of(stage, ready));
                Assert.True(expected <= listed.Earliest(stage, ready));
            }
        }
    }

    // Half a year without staffed hours: what is not listed is planned all the same, soundly, and its bound is below it.
    [Fact]
    public async Task A_question_too_large_to_list_is_planned_all_the_same()
    {
        var request = new PlanRequest(
            new("2026-12-01T00:00", "2027-05-30T00:00"), [.. "abcde".Select(k => Studio.Kiln(k.ToString()))],
            [.. Enumerable.Range(0, 1450).Select(i => Large(i))], "Europe/Berlin");
        Assert.False(Openings.AreFew(Studio.Digest(request).Problem));
        Assert.True(Openings.AreFew(Studio.Digest(Studio.Sample).Problem));

        var plan = await new Planner(Studio.Reference).PlanAsync(request, new(Seconds: 0.5));

        Assert.Empty(PlanJudge.Faults(request, plan));
        Assert.Equal(1450, plan.Pieces.Count);
        Assert.True(plan.Summary.LowerBound is null || plan.Summary.LowerBound <= plan.Summary.Cost);
        Assert.True(plan.Summary.LateBound <= plan.Summary.LateWeight);
        // Nothing has a date, and a kiln that is not full enough is not fired: less than a kiln full is left.
        Assert.InRange(plan.Summary.Undone, 0, 150);
        Assert.DoesNotContain(plan.Unplanned, u => u.Reason == WaitReason.NoFiringAccepts);

        static PlanPiece Large(int i)
        {
            var mug = Studio.Mug($"piece {i}", 1);
            return mug with { Piece = mug.Piece! with { Size = new(60 + (i % 100), 50 + (i / 100)) } };
        }
    }
}
