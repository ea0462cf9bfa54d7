using System.Diagnostics;
using ConeService.Contract.Answers;
using ConeService.Contract.Plans;
using ConeService.Firing;
using ConeService.Planning.Digest;
using ConeService.Planning.Explain;
using ConeService.Planning.Model;
using ConeService.Planning.Requests;
using ConeService.Planning.WhatIf;

namespace ConeService.Planning;

/// <summary>The one door into planning: makes a firing plan of a backlog, kilns and a calendar. For several threads.</summary>
/// <param name="reference">What judges loads and fits schedules.</param>
public sealed class Planner(FiringReference reference)
{
    // Of the time asked for.
    private const double ShareOfWhatIf = 0.08;

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
        searched = searched with { Plan = Quickest.Of(digested.Problem, searched.Plan) };
        var alternatives = new Alternatives(
            digested.Problem, searched.Plan, effort.Seconds * ShareOfWhatIf, effort.Seconds > 0 ? 0 : Math.Max(20, effort.Steps / 10),
                effort.Seed).All();
        return new PlanWriter(reference, request, digested).Write(searched, effort.Seed, alternatives);
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
        using var search = new Effort(problem, effort, begun);
        return await search.SearchAsync();
    }

    private Digested Digest(PlanRequest request)
    {
        try
        {
            return new Digester(reference).Digest(request);
        }
        catch (PlanRefusedException refused)
        {
            throw new RefusedException([.. refused.Findings.DistinctBy(f => (f.Code, f.Pointer)).Select(PlanFindings.Told)]);
        }
    }
}
