using System.Diagnostics;
using ConeService.Contract.Answers;
using ConeService.Contract.Plans;
using ConeService.Firing;
using ConeService.Planning.Bounds;
using ConeService.Planning.Digest;
using ConeService.Planning.Explain;
using ConeService.Planning.FirstPlan;
using ConeService.Planning.Model;
using ConeService.Planning.Requests;
using ConeService.Planning.Search;

namespace ConeService.Planning;

/// <summary>The one door into planning: makes a firing plan of a backlog, kilns and a calendar. For several threads.</summary>
/// <param name="reference">What judges loads and fits schedules.</param>
public sealed class Planner(FiringReference reference)
{
    // Writing the answer, and having the load check judge it, take their time too.
    private const double ShareOfSearch = 0.85;

    /// <summary>Makes a plan.</summary>
    /// <param name="request">The backlog, the kilns and the calendar.</param>
    /// <param name="effort">How hard it is searched for.</param>
    /// <exception cref="RefusedException">Something is wrong with the request; carries every finding.</exception>
    /// <exception cref="OperationCanceledException">Nobody waits for it any more.</exception>
    public async Task<FiringPlan> PlanAsync(PlanRequest request, PlanEffort effort)
    {
        var begun = Stopwatch.GetTimestamp();
        var digested = Digest(request);
        var searched = await SearchAsync(digested.Problem, effort, begun);
        return new PlanWriter(reference, request, digested).Write(searched, effort.Seed);
    }

    /// <summary>What is wrong with a request; empty where a plan can be made of it.</summary>
    public IReadOnlyList<Finding> Findings(PlanRequest request)
    {
        try
        {
            _ = Digest(request);
            return [];
        }
        catch (RefusedException refused)
        {
            return refused.Findings;
        }
    }

    /// <summary>The same in whole numbers.</summary>
    internal static async Task<Searched> SearchAsync(Problem problem, PlanEffort effort, long begun)
    {
        var first = FirstPlanner.Of(problem);
        var bounds = AloneBounds.Of(problem);
        if (bounds.Reached(first.Score)) return new(first, bounds, 0);
        var searches = Enumerable.Range(0, effort.Workers).Select(w => Task.Run(() =>
        {
            var search = new CalendarSearch(problem, effort.Seed + w);
            var found = search.Search(first, Progress(search), plan => bounds.Reached(plan.Score));
            return (Plan: found, search.Steps);
        }));
        var found = await Task.WhenAll(searches);
        return new(found.Select(f => f.Plan).Aggregate(FirstPlanner.Better), bounds, found.Sum(f => f.Steps));

        Func<long, double> Progress(CalendarSearch search)
        {
            var most = effort.Steps > 0 ? effort.Steps : search.WorthTrying;
            return steps => Math.Max(
                steps / (double)most,
                effort.Seconds > 0 ? Stopwatch.GetElapsedTime(begun).TotalSeconds / (effort.Seconds * ShareOfSearch) : 0);
        }
    }

    private Digested Digest(PlanRequest request)
    {
        try
        {
            return new Digester(reference).Digest(request);
        }
        catch (PlanRefusedException refused)
        {
            throw new RefusedException([.. refused.Findings.Select(PlanFindings.Told)]);
        }
    }
}

/// <summary>What was found.</summary>
/// <param name="Plan">The best plan.</param>
/// <param name="Bounds">What no plan betters.</param>
/// <param name="Steps">Calendars tried.</param>
internal sealed record Searched(Draft Plan, PlanBounds Bounds, long Steps);
