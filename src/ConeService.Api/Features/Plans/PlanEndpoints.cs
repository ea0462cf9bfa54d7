using ConeService.Api.Features.HeatWork;
using ConeService.Api.Features.Schedules;
using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Api.OpenApi;
using ConeService.Api.Operation.Work;
using ConeService.Contract.Answers;
using ConeService.Contract.Plans;
using ConeService.Planning;

namespace ConeService.Api.Features.Plans;

/// <summary>Which firings run when, with which pieces.</summary>
internal static class PlanEndpoints
{
    private const string Charset = "; charset=utf-8";

    public static void MapPlans(this IEndpointRouteBuilder routes) =>
        routes.MapPosted("/plans", PlanFirings).WithQuery("seconds").WithMetadata(new LongComputation((int)PlanLimits.MostSeconds))
            .Accepts<PlanRequest>(JsonBody.MediaType)
            .Describe("planFirings", Tags.Plans)
            .Answers<FiringPlan>(Csv.MediaType, HeatWorkFigure.MediaType, FitCalendar.MediaType, HtmlPage.MediaType)
            .Problems(406, 413, 415);

    /// <summary>Which firings, when, in which kiln, with which pieces?</summary>
    /// <remarks>
    /// A backlog, the kilns and a calendar: a plan in which every piece goes through its firings as the load check accepts them, by its
    /// date, with the kilns full. First pieces late are kept few, then pieces left undone, then cost. Firings that stand are kept; of an
    /// announced plan little is changed. What is left undone, and what waits, is told with its reasons. Room is reckoned in layers of
    /// shelves. Nothing is stored: send the firings of a plan back to plan on. Answers JSON, text/csv with a line for each piece and
    /// firing, text/calendar, a week sheet with loading lists as text/html, and a chart of the kilns as image/svg+xml. The plan does not
    /// know how evenly a kiln fires nor what breaks: whoever loads and fires decides.
    /// </remarks>
    /// <param name="body">The backlog, the kilns and the calendar.</param>
    /// <param name="seconds">How long the plan may be searched for, 0.5 to 30 s; less where nothing is left to better. Left out: 5.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    /// <param name="time">The clock, for the stamp of calendar entries.</param>
    /// <param name="computations">Whether the native solver is used.</param>
    internal static async Task<IResult> PlanFirings(
        JsonRequest<PlanRequest> body, string? seconds, HttpRequest request, SnapshotHolder snapshots, TimeProvider time,
        Computations computations)
    {
        var type = Negotiation.Choose(
            request, JsonBody.MediaType, Csv.MediaType, HeatWorkFigure.MediaType, FitCalendar.MediaType, HtmlPage.MediaType);
        var planner = new Planner(snapshots.Current.Reference);
        var most = Mistakes.Try(request.HttpContext, () => PlanCheck.Seconds(seconds));
        // No plan is searched for that nobody would get.
        if (Mistakes.Any(request.HttpContext)) throw new RefusedException(planner.Findings(body.Value));
        var effort = new PlanEffort(most, Workers: Math.Min(2, Environment.ProcessorCount), Solver: computations.Solver);
        var plan = await planner.PlanAsync(body.Value, effort);
        return type switch
        {
            Csv.MediaType => WholeBody.Text(plan, PlanCsv.Write(plan), type + Charset),
            HeatWorkFigure.MediaType => WholeBody.Text(plan, PlanFigure.Render(plan, body.Value), type + Charset),
            FitCalendar.MediaType => WholeBody.Text(plan, PlanCalendar.Write(plan, time.GetUtcNow()), type + Charset),
            HtmlPage.MediaType => WholeBody.Text(plan, PlanSheet.Render(plan, body.Value), type + Charset),
            _ => JsonBody.Posted(plan),
        };
    }
}
