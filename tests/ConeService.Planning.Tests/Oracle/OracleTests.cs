using System.Globalization;
using ConeService.Planning.Bounds;
using ConeService.Planning.Judge;
using ConeService.Planning.Solver;

namespace ConeService.Planning.Tests.Oracle;

/// <summary>
/// Plans against brute force: six questions in every run, as many more as <c>PLANNING_ORACLE</c> says. The plan reaches the best there is,
/// no bound is above it, and what is called proven is so.
/// </summary>
public sealed class OracleTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(8)]
    [InlineData(13)]
    public async Task A_small_question_gets_the_best_plan(int number) => Assert.Equal("", await Faults(number));

    [Fact]
    public async Task Many_drawn_questions_get_the_best_plan()
    {
        var many = int.Parse(Environment.GetEnvironmentVariable("PLANNING_ORACLE") ?? "0", CultureInfo.InvariantCulture);
        var faults = new List<string>();
        for (var number = 100; number < 100 + many; number++)
        {
            if (await Faults(number) is { Length: > 0 } fault) faults.Add($"{number}: {fault}");
        }

        output.WriteLine($"{many} questions, {faults.Count} faults");
        Assert.Empty(faults);
    }

    private static async Task<string> Faults(int number)
    {
        var problem = DrawnProblems.Of(number);
        var best = BruteForce.Best(problem);
        var found = await Planner.SearchAsync(problem, new(Seconds: 0, Steps: 400, Workers: 1), 0);
        var (score, bounds) = (found.Plan.Score, found.Bounds);
        var faults = DraftJudge.Faults(problem, found.Plan).ToList();
        var reached = new Worth(score.Late, score.Undone, score.Cost, score.Waiting);
        if (reached != best) faults.Add($"{reached} is not {best}");
        if (bounds.Late > best.Late) faults.Add($"late {best.Late} is below its bound {bounds.Late}");
        if (bounds.Late == best.Late && bounds.Undone > best.Undone) faults.Add($"undone {best.Undone} is below its bound {bounds.Undone}");
        if (bounds.CostOf(score) > best.Cost) faults.Add($"cost {best.Cost} is below its bound {bounds.Cost}");
        var counted = new PlanSolver(problem, 1).Count(found.Plan, AloneBounds.Of(problem), new(double.PositiveInfinity, 1));
        if (counted.Late > best.Late) faults.Add($"late {best.Late} is below what is counted, {counted.Late}");
        if (counted.Undone > best.Undone) faults.Add($"undone {best.Undone} is below what is counted, {counted.Undone}");
        if (counted.CostOf(score) > best.Cost) faults.Add($"cost {best.Cost} is below what is counted, {counted.Cost}");
        return string.Join("; ", faults);
    }
}
