using ConeService.Api.Features.HeatWork;
using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Firing.Answers;
using ConeService.Firing.Kilns;
using ConeService.Firing.Schedules;
using ConeService.Firing.Schedules.Answers;
using ConeService.Firing.Schedules.Fitting;

namespace ConeService.Api.Features.Schedules;

/// <summary>Firing schedules, and programmes made of them for a cone, a kiln and a load.</summary>
internal static class ScheduleEndpoints
{
    private const string ContentCharset = "; charset=utf-8";

    public static void MapSchedules(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/schedules", List).WithQuery("kind", "cone", "atmosphere").Describe("listSchedules", Tags.Schedules).Answers<ScheduleList>();
        routes.MapRead("/schedules/{schedule}", Detail).WithQuery("units").Describe("getSchedule", Tags.Schedules).Answers<ScheduleDetail>().Problems(404);
        routes.MapPost("/schedules/{schedule}/fit", Fit).WithQuery()
            .Accepts<FitRequest>(JsonBody.MediaType).Validated<FitRequest>()
            .Describe("fitSchedule", Tags.Schedules)
            .Answers<ScheduleFit>(Csv.MediaType, HeatWorkFigure.MediaType, FitCalendar.MediaType, HtmlPage.MediaType).Problems(404, 406, 413, 415);
    }

    /// <summary>The schedules.</summary>
    /// <remarks>Templates as they are handed on, before they are fitted: what each is for, the cones it can be fitted to, and how far it can be trusted.</remarks>
    /// <param name="kind">The kind of firing: bisque, glaze, single, overglaze, raku, salt, soda, wood, pit or saggar. Left out: all.</param>
    /// <param name="cone">A cone that the schedule can be fitted to. Left out: all.</param>
    /// <param name="atmosphere">The atmosphere in which the ware matures: oxidation, neutral or reduction. Left out: all.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult List(string? kind, string? cone, string? atmosphere, SnapshotHolder snapshots)
    {
        var snapshot = snapshots.Current;
        var filter = ScheduleFilter.Read(snapshot.Charts.Scale, kind, cone, atmosphere);
        return snapshot.Prepare($"schedules/{filter.Kind}/{filter.Cone}/{filter.Atmosphere}", filter, static (s, f) => JsonBody.Cacheable(Describer(s).List(f)));
    }

    /// <summary>One schedule with its segments.</summary>
    /// <remarks>Every segment with rate, target, hold, purpose, atmosphere and vent, which of its figures were published, and its source.</remarks>
    /// <param name="schedule">Name of the schedule, from /v1/schedules.</param>
    /// <param name="units">C or F: the unit in which the segments are put into words. Left out: C, said in assumed.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Detail(string schedule, string? units, SnapshotHolder snapshots)
    {
        var snapshot = snapshots.Current;
        var found = Book(snapshot).Find(schedule);
        if (units is not (null or "C" or "F")) throw new RefusedException(new Finding("units-unknown", "units", units, $"“{units}” is not a unit of temperature.", ["C", "F"]));
        return snapshot.Prepare($"schedule/{found.Id}/{units}", (found, units), static (s, x) => JsonBody.Cacheable(Describer(s).Detail(x.found, x.units)));
    }

    /// <summary>A programme for your cone, kiln and load.</summary>
    /// <remarks>The last ramp and hold are solved so that the target cone is just down and the next one is not; drying and the quartz inversion follow the thickness of the wall; segments are joined when the controller holds fewer, and what is lost is named. With a kiln: whether it can follow, what it does instead, hours, energy and cost. Answers JSON, the programme as text/csv, a figure as image/svg+xml, a calendar as text/calendar (needs a start), and a sheet to print as text/html.</remarks>
    /// <param name="schedule">Name of the schedule, from /v1/schedules.</param>
    /// <param name="body">Cone, kiln, load, start and tariff.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    /// <param name="time">The clock, for the stamp of calendar entries.</param>
    internal static IResult Fit(string schedule, FitBody body, HttpRequest request, SnapshotHolder snapshots, TimeProvider time)
    {
        var type = Negotiation.Choose(request, JsonBody.MediaType, Csv.MediaType, HeatWorkFigure.MediaType, FitCalendar.MediaType, HtmlPage.MediaType);
        var snapshot = snapshots.Current;
        var fit = snapshot.Part(static s => new ScheduleFitter(Book(s), s.Charts, s.Part(static x => new KilnModel(x.Dataset)))).Fit(Book(snapshot).Find(schedule), body.Value);
        return type switch
        {
            Csv.MediaType => WholeBody.Text(fit.Answer, FitCsv.Write(fit.Answer), type + ContentCharset),
            HeatWorkFigure.MediaType => WholeBody.Text(fit.Answer, FitFigure.Render(fit), type + ContentCharset),
            FitCalendar.MediaType => WholeBody.Text(fit.Answer, FitCalendar.Write(fit.Answer, time.GetUtcNow()), type + ContentCharset),
            HtmlPage.MediaType => WholeBody.Text(fit.Answer, FitSheet.Render(fit), type + ContentCharset),
            _ => JsonBody.Posted(fit.Answer),
        };
    }

    private static ScheduleBook Book(Snapshot snapshot) => snapshot.Part(static s => new ScheduleBook(s.Dataset));

    private static ScheduleDescriber Describer(Snapshot snapshot) => snapshot.Part(static s => new ScheduleDescriber(Book(s), s.Charts));
}

/// <summary>A fit request read from JSON.</summary>
/// <param name="Value">The request.</param>
internal sealed record FitBody(FitRequest Value) : IRequestBody<FitRequest>
{
    /// <summary>Binds the parameter.</summary>
    public static async ValueTask<FitBody?> BindAsync(HttpContext context) => new(await JsonOnly.ReadAsync<FitRequest>(context.Request));
}
