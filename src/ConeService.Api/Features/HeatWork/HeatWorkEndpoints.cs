using System.Globalization;
using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Api.OpenApi;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Features.HeatWork;

/// <summary>What a firing did to the cones, what would put one down, and how far the meter is off.</summary>
internal static class HeatWorkEndpoints
{
    internal static readonly string[] UploadParameters =
    [
        "units", "chart", "thermocoupleType", "thermocoupleStandard", "thermocoupleClass", "firings", "atmosphere", "timeColumn",
        "temperatureColumn", "timeZone", "dateOrder",
    ];

    public static void MapHeatWork(this IEndpointRouteBuilder routes)
    {
        routes.MapPosted("/heat-work", Follow).WithQuery(UploadParameters).WithMetadata(new UploadLimit())
            .Accepts<HeatWorkRequest>(JsonBody.MediaType, Csv.MediaType)
            .Describe("followFiring", Tags.HeatWork).Answers<HeatWorkAnswer>(HeatWorkFigure.MediaType).Problems(406, 413, 415);
        routes.MapPosted("/heat-work/solve", Solve).WithQuery().WithMetadata(new UploadLimit())
            .Accepts<SolveRequest>(JsonBody.MediaType)
            .Describe("solveFiring", Tags.HeatWork).Answers<SolveAnswer>(HeatWorkFigure.MediaType).Problems(406, 413, 415);
        routes.MapPosted("/heat-work/compare", Compare).WithQuery().WithMetadata(new UploadLimit())
            .Accepts<CompareRequest>(JsonBody.MediaType)
            .Describe("compareFiring", Tags.HeatWork).Answers<CompareAnswer>(HeatWorkFigure.MediaType).Problems(406, 413, 415);
    }

    /// <summary>What a firing did to the cones.</summary>
    /// <remarks>A programme or a log as JSON, or a log as text/csv of up to 10 MB: the cone reached, how far to the next, and for
    /// every cone of the chart its progress, lean, margin, the minute it went down and the probability that it is down. What was
    /// found in a log and done about it is in warnings. Answers a figure as image/svg+xml.</remarks>
    /// <param name="body">The firing, as JSON or CSV.</param>
    /// <param name="units">With CSV: C or F, when the header does not say.</param>
    /// <param name="chart">With CSV: name of the chart, from /v1/charts.</param>
    /// <param name="thermocoupleType">With CSV: K, N, R, S or B.</param>
    /// <param name="thermocoupleStandard">With CSV: iec-60584 or astm-e230.</param>
    /// <param name="thermocoupleClass">With CSV: 1 or 2, standard or special.</param>
    /// <param name="firings">With CSV: how many firings above 1100 °C the thermocouple has seen.</param>
    /// <param name="atmosphere">With CSV: oxidation, neutral or reduction.</param>
    /// <param name="timeColumn">With CSV: name of the time column, when several could be it.</param>
    /// <param name="temperatureColumn">With CSV: name of the temperature column, when only one of several is to be read.</param>
    /// <param name="timeZone">With CSV: IANA name of the zone of the log's clock, such as Europe/Berlin; UTC for a clock that never
    /// changes.</param>
    /// <param name="dateOrder">With CSV: day-first or month-first, when every date of the log can be read both ways.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static async Task<IResult> Follow(
        HeatWorkBody body, string? units, string? chart, string? thermocoupleType, string? thermocoupleStandard, string? thermocoupleClass,
        string? firings, string? atmosphere, string? timeColumn, string? temperatureColumn, string? timeZone, string? dateOrder,
        HttpRequest request, SnapshotHolder snapshots)
    {
        var figure = WantsFigure(request);
        var reference = snapshots.Current.Reference.HeatWork;
        if (body.Upload is not { } upload) return Show(reference.Follow(body.Value), figure);
        var settings = new HeatWorkRequest
        {
            Units = units,
            Chart = chart,
            Atmosphere = atmosphere,
            Thermocouple = new(
                thermocoupleType, thermocoupleStandard, SentText.Of(thermocoupleClass),
                Mistakes.Try(request.HttpContext, () => Number(firings))),
        };
        var reading = new LogReading(timeColumn, temperatureColumn, timeZone, dateOrder);
        var log = Mistakes.Try(request.HttpContext, () => reference.Upload(settings, reading))
            ?? LogUpload.Alone(reference, units, reading);
        return Show(await LogUpload.ReadAsync(upload, log, request.HttpContext.RequestAborted), figure);
    }

    /// <summary>What puts a cone just down.</summary>
    /// <remarks>A programme and a cone: which peak, which hold, or which rate of the hottest segment puts it just down, given the
    /// rest. When nothing does, the answer says why and what would be feasible. Answers a figure as image/svg+xml.</remarks>
    /// <param name="body">The programme, the cone and what is asked for.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Solve(JsonRequest<SolveRequest> body, HttpRequest request, SnapshotHolder snapshots)
    {
        var figure = WantsFigure(request);
        var (answer, curve) = snapshots.Current.Reference.HeatWork.Solve(body.Value);
        if (!figure) return JsonBody.Posted(answer);
        return curve is null
            ? WholeBody.Text(
                answer, HeatWorkFigure.OfWords($"Cone {answer.Cone} can't be put just down", answer.Why!.ToString()),
                HeatWorkFigure.ContentType)
            : WholeBody.Text(answer, HeatWorkFigure.Render(answer.HeatWork!, curve()), HeatWorkFigure.ContentType);
    }

    /// <summary>How far the meter is off, by witness cones.</summary>
    /// <remarks>A log, or several, with what the cones looked like afterwards (down, standing, clock hand or degrees): the offset
    /// of the meter with its standard error, per firing and pooled, and whether the observations contradict each other. Answers a
    /// figure of the first firing as image/svg+xml.</remarks>
    /// <param name="body">The firings with their witness cones.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Compare(JsonRequest<CompareRequest> body, HttpRequest request, SnapshotHolder snapshots)
    {
        var figure = WantsFigure(request);
        var (answer, curve) = snapshots.Current.Reference.HeatWork.Compare(body.Value);
        return figure
            ? WholeBody.Text(answer, HeatWorkFigure.Render(answer.Firings[0].HeatWork, curve!()), HeatWorkFigure.ContentType)
            : JsonBody.Posted(answer);
    }

    private static bool WantsFigure(HttpRequest request) =>
        Negotiation.Choose(request, JsonBody.MediaType, HeatWorkFigure.MediaType) == HeatWorkFigure.MediaType;

    private static IResult Show(Followed<HeatWorkAnswer> followed, bool figure) => figure
        ? WholeBody.Text(followed.Answer, HeatWorkFigure.Render(followed.Answer, followed.Curve!()), HeatWorkFigure.ContentType)
        : JsonBody.Posted(followed.Answer);

    private static double? Number(string? text)
    {
        if (text is null) return null;
        return double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? number
            : throw new RefusedException(new Finding(
                FindingCodes.NumberOutOfRange, "firings", text, Message.Of("heat-work.not-a-number-of-firings", ("text", text)),
                [Message.Of("heat-work.firings-allowed")]));
    }
}
