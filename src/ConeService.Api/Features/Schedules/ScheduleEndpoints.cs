using ConeService.Api.Features.HeatWork;
using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Api.Operation.Work;
using ConeService.Contract.Answers;
using ConeService.Contract.Batches;
using ConeService.Contract.Schedules;

namespace ConeService.Api.Features.Schedules;

/// <summary>Firing schedules, and programmes made of them for a cone, a kiln and a load.</summary>
internal static class ScheduleEndpoints
{
    private const string ContentCharset = "; charset=utf-8";

    public static void MapSchedules(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/schedules", List).WithQuery("firingKind", "cone", "atmosphere")
            .Describe("listSchedules", Tags.Schedules).Answers<ScheduleList>(Csv.MediaType).Problems(406);
        routes.MapRead("/schedules/{schedule}", Detail).WithQuery("units")
            .Describe("getSchedule", Tags.Schedules).Answers<ScheduleDetail>().Problems(404);
        routes.MapPosted("/schedules/fit/batch", FitBatch).WithQuery()
            .Accepts<FitBatchRequest>(JsonBody.MediaType)
            .Describe("fitSchedules", Tags.Schedules).Answers<BatchAnswer<ScheduleFit>>().Problems(413, 415);
        routes.MapPosted("/schedules/{schedule}/fit", Fit).WithQuery()
            .Accepts<FitRequest>(JsonBody.MediaType)
            .Describe("fitSchedule", Tags.Schedules)
            .Answers<ScheduleFit>(Csv.MediaType, HeatWorkFigure.MediaType, FitCalendar.MediaType, HtmlPage.MediaType)
            .Problems(404, 406, 413, 415);
        Computations.Bound(routes.MapRead("/schedules/{schedule}/fit", ReadFit)).WithQuery(FitParameters.Names)
            .Describe("readFit", Tags.Schedules)
            .Answers<ScheduleFit>(Csv.MediaType, HeatWorkFigure.MediaType, FitCalendar.MediaType, HtmlPage.MediaType)
            .Problems(404, 406);
    }

    /// <summary>The schedules.</summary>
    /// <remarks>Templates as they are handed on, before they are fitted: what each is for, the cones it can be fitted to, and how far it
    /// can be trusted.</remarks>
    /// <param name="firingKind">The kind of firing: bisque, glaze, single, overglaze, raku, salt, soda, wood, pit or saggar. Left out:
    /// all.</param>
    /// <param name="cone">A cone that the schedule can be fitted to. Left out: all.</param>
    /// <param name="atmosphere">The atmosphere in which the ware matures: oxidation, neutral or reduction. Left out: all.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult List(string? firingKind, string? cone, string? atmosphere, HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Filtered(
            request, snapshots.Current, "schedules", [firingKind, cone, atmosphere],
            static r => r.Schedules.List(), r => r.Schedules.List(firingKind, cone, atmosphere));

    /// <summary>One schedule with its segments.</summary>
    /// <remarks>Every segment with rate, target, hold, purpose, atmosphere and vent, which of its figures were published, and its
    /// source.</remarks>
    /// <param name="schedule">Name of the schedule, from /v1/schedules.</param>
    /// <param name="units">C or F: the unit in which the segments are put into words. Left out: C, said in assumed.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Detail(string schedule, string? units, SnapshotHolder snapshots) =>
        snapshots.Current.Prepare(
            $"schedule/{schedule}/{units}",
            (schedule, units),
            static (r, x) => JsonBody.Cacheable(r.Schedules.Detail(x.schedule, x.units)));

    /// <summary>Up to 100 programmes for one kiln.</summary>
    /// <remarks>Each fit is answered as it would be alone, in the order asked; one that is refused gets its problems instead. What the kiln
    /// is, what energy costs and the units stand once, for all.</remarks>
    /// <param name="body">The kiln and the fits.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    /// <param name="time">The clock, for starts that are to be chosen from now on.</param>
    internal static IResult FitBatch(
        JsonRequest<FitBatchRequest> body, HttpRequest request, SnapshotHolder snapshots, TimeProvider time) =>
        JsonBody.Posted(snapshots.Current.Reference.Schedules.FitEach(body.Value, time.GetUtcNow()), request);

    /// <summary>A programme for your cone, kiln and load.</summary>
    /// <remarks>The last ramp and hold are solved so that the target cone is just down and the next one is not; drying and the quartz
    /// inversion follow the thickness of the wall; segments are joined when the controller holds fewer, and what is lost is named. With a
    /// kiln: whether it can follow, what it does instead, hours, energy and cost. Instead of a start: finishBy, peakBetween or a tariff
    /// with periods choose it, and the answer says what that saves. Answers JSON, the programme as text/csv, a figure as
    /// image/svg+xml, a calendar as text/calendar (needs a start), and a sheet to print as text/html.</remarks>
    /// <param name="schedule">Name of the schedule, from /v1/schedules.</param>
    /// <param name="body">Cone, kiln, load, start and tariff.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    /// <param name="time">The clock, for the stamp of calendar entries and for starts that are to be chosen from now on.</param>
    internal static IResult Fit(
        string schedule, JsonRequest<FitRequest> body, HttpRequest request, SnapshotHolder snapshots, TimeProvider time) =>
        Form(Choose(request), snapshots.Current.Reference.Schedules.Fit(schedule, body.Value, time.GetUtcNow()), time);

    /// <summary>A programme for your cone, kiln and load, as a link.</summary>
    /// <remarks>The same answer as to POST with the same facts, for what holds an address and sends no body: a link, an image, a calendar
    /// that is subscribed to (end the path with .ics and give a start). Members of the body that have no parameter are left out: what
    /// they would say is assumed.</remarks>
    /// <param name="schedule">Name of the schedule, from /v1/schedules.</param>
    /// <param name="asked">The parameters.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    /// <param name="time">The clock, for the stamp of calendar entries.</param>
    internal static IResult ReadFit(
        string schedule, [AsParameters] FitParameters asked, HttpRequest request, SnapshotHolder snapshots, TimeProvider time)
    {
        var type = Choose(request);
        try
        {
            var fit = snapshots.Current.Reference.Schedules.Fit(schedule, asked.ToRequest(request.HttpContext));
            var body = Form(type, fit, time);
            // Entries of a calendar are stamped with the hour of asking, which changes nothing of what they say.
            return body.Cacheable(type == FitCalendar.MediaType ? FitCalendar.Write(fit.Answer, DateTimeOffset.UnixEpoch) : null);
        }
        catch (RefusedException refused)
        {
            throw FitParameters.OfParameters(refused);
        }
    }

    private static string Choose(HttpRequest request) => Negotiation.Choose(
        request, JsonBody.MediaType, Csv.MediaType, HeatWorkFigure.MediaType, FitCalendar.MediaType, HtmlPage.MediaType);

    private static WholeBody Form(string type, FittedSchedule fit, TimeProvider time) => type switch
    {
        Csv.MediaType => WholeBody.Text(fit.Answer, FitCsv.Write(fit.Answer), type + ContentCharset),
        HeatWorkFigure.MediaType => WholeBody.Text(fit.Answer, FitFigure.Render(fit), type + ContentCharset),
        FitCalendar.MediaType => WholeBody.Text(fit.Answer, FitCalendar.Write(fit.Answer, time.GetUtcNow()), type + ContentCharset),
        HtmlPage.MediaType => WholeBody.Text(fit.Answer, FitSheet.Render(fit), type + ContentCharset),
        _ => JsonBody.Posted(fit.Answer),
    };
}
