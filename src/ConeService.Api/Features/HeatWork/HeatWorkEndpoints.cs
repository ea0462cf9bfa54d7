using System.Globalization;
using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Firing.Answers;
using ConeService.Firing.HeatWork;
using ConeService.Firing.HeatWork.Answers;
using ConeService.Firing.HeatWork.Logs;

namespace ConeService.Api.Features.HeatWork;

/// <summary>What a firing did to the cones, what would put one down, and how far the meter is off.</summary>
internal static class HeatWorkEndpoints
{
    private static readonly string[] UploadParameters =
        ["units", "chart", "thermocoupleType", "thermocoupleStandard", "thermocoupleClass", "firings", "atmosphere", "timeColumn", "temperatureColumn"];

    public static void MapHeatWork(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/heat-work", Follow).WithQuery(UploadParameters).WithMetadata(new UploadLimit())
            .Accepts<HeatWorkRequest>(JsonBody.MediaType, Csv.MediaType).Validated<HeatWorkRequest>()
            .Describe("followFiring", Tags.HeatWork).Answers<HeatWorkAnswer>(HeatWorkFigure.MediaType).Problems(406, 413, 415);
        routes.MapPost("/heat-work/solve", Solve).WithQuery().WithMetadata(new UploadLimit())
            .Accepts<SolveRequest>(JsonBody.MediaType).Validated<SolveRequest>()
            .Describe("solveFiring", Tags.HeatWork).Answers<SolveAnswer>(HeatWorkFigure.MediaType).Problems(406, 413, 415);
        routes.MapPost("/heat-work/compare", Compare).WithQuery().WithMetadata(new UploadLimit())
            .Accepts<CompareRequest>(JsonBody.MediaType).Validated<CompareRequest>()
            .Describe("compareFiring", Tags.HeatWork).Answers<CompareAnswer>(HeatWorkFigure.MediaType).Problems(406, 413, 415);
    }

    /// <summary>What a firing did to the cones.</summary>
    /// <remarks>A programme or a log as JSON, or a log as text/csv of up to 10 MB: the cone reached, how far to the next, and for every cone of the chart its progress, lean, margin, the minute it went down and the probability that it is down. What was found in a log and done about it is in warnings. Answers a figure as image/svg+xml.</remarks>
    /// <param name="body">The firing, as JSON or CSV.</param>
    /// <param name="units">With CSV: C or F, when the header does not say.</param>
    /// <param name="chart">With CSV: name of the chart, from /v1/charts.</param>
    /// <param name="thermocoupleType">With CSV: K, N, R, S or B.</param>
    /// <param name="thermocoupleStandard">With CSV: iec-60584 or astm-e230.</param>
    /// <param name="thermocoupleClass">With CSV: 1 or 2, standard or special.</param>
    /// <param name="firings">With CSV: how many firings above 1100 °C the thermocouple has seen.</param>
    /// <param name="atmosphere">With CSV: oxidation, neutral or reduction.</param>
    /// <param name="timeColumn">With CSV: name of the time column, when several could be it.</param>
    /// <param name="temperatureColumn">With CSV: name of the temperature column, when several could be it.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static async Task<IResult> Follow(
        HeatWorkBody body, string? units, string? chart, string? thermocoupleType, string? thermocoupleStandard, string? thermocoupleClass, string? firings,
        string? atmosphere, string? timeColumn, string? temperatureColumn, HttpRequest request, SnapshotHolder snapshots)
    {
        var figure = WantsFigure(request);
        var calculator = Calculator(snapshots.Current);
        if (body.Upload is not { } upload) return Show(calculator.Answer(body.Value), figure);
        var findings = new List<Finding>();
        var settings = calculator.Settings(
            new() { Chart = chart, Atmosphere = atmosphere, Thermocouple = new(thermocoupleType, thermocoupleStandard, SentText.Of(thermocoupleClass), Number(firings, findings)) }, "");
        if (units is not (null or "C" or "F")) findings.Add(new("units-unknown", "units", units, $"“{units}” is not a unit of temperature.", ["C", "F"]));
        if (findings.Count > 0) throw new RefusedException(findings);
        var log = await LogUpload.ReadAsync(upload, new LogText(units, timeColumn, temperatureColumn), request.HttpContext.RequestAborted);
        return Show(calculator.Answer(log, settings, units == "F"), figure);
    }

    /// <summary>What puts a cone just down.</summary>
    /// <remarks>A programme and a cone: which peak, which hold, or which rate of the hottest segment puts it just down, given the rest. When nothing does, the answer says why and what would be feasible. Answers a figure as image/svg+xml.</remarks>
    /// <param name="body">The programme, the cone and what is asked for.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Solve(SolveBody body, HttpRequest request, SnapshotHolder snapshots)
    {
        var figure = WantsFigure(request);
        var (answer, history) = snapshots.Current.Part(static s => new HeatWorkSolver(Calculator(s))).Answer(body.Value);
        if (!figure) return JsonBody.Posted(answer);
        return history is null
            ? WholeBody.Text(answer, HeatWorkFigure.Message($"Cone {answer.Cone} can't be put just down", answer.Why!), HeatWorkFigure.ContentType)
            : WholeBody.Text(answer, HeatWorkFigure.Render(answer.HeatWork!, history), HeatWorkFigure.ContentType);
    }

    /// <summary>How far the meter is off, by witness cones.</summary>
    /// <remarks>A log, or several, with what the cones looked like afterwards (down, standing, clock hand or degrees): the offset of the meter with its standard error, per firing and pooled, and whether the observations contradict each other. Answers a figure of the first firing as image/svg+xml.</remarks>
    /// <param name="body">The firings with their witness cones.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Compare(CompareBody body, HttpRequest request, SnapshotHolder snapshots)
    {
        var figure = WantsFigure(request);
        var (answer, history) = snapshots.Current.Part(static s => new HeatWorkComparer(Calculator(s))).Answer(body.Value);
        return figure ? WholeBody.Text(answer, HeatWorkFigure.Render(answer.Firings[0].HeatWork, history), HeatWorkFigure.ContentType) : JsonBody.Posted(answer);
    }

    private static HeatWorkCalculator Calculator(Snapshot snapshot) => snapshot.Part(static s => new HeatWorkCalculator(s.Charts));

    private static bool WantsFigure(HttpRequest request) => Negotiation.Choose(request, JsonBody.MediaType, HeatWorkFigure.MediaType) == HeatWorkFigure.MediaType;

    private static IResult Show(HeatWorkResult result, bool figure) =>
        figure ? WholeBody.Text(result.Answer, HeatWorkFigure.Render(result.Answer, result.History), HeatWorkFigure.ContentType) : JsonBody.Posted(result.Answer);

    private static double? Number(string? text, List<Finding> findings)
    {
        if (text is null) return null;
        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)) return number;
        findings.Add(new("number-out-of-range", "firings", text, $"“{text}” is not a number of firings.", ["0 to 10,000 firings"]));
        return null;
    }
}
