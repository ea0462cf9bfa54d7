using ConeService.Api.Features.Schedules;
using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Api.OpenApi;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;

namespace ConeService.Api.Features.HeatWork;

/// <summary>What a firing under way will do.</summary>
internal static class ForecastEndpoints
{
    private const string Charset = "; charset=utf-8";

    public static void MapForecast(this IEndpointRouteBuilder routes) =>
        routes.MapPosted("/heat-work/forecast", Forecast).WithQuery([.. ForecastBody.Parameters]).WithMetadata(new UploadLimit())
            .Accepts<ForecastRequest>(JsonBody.MediaType, Csv.MediaType)
            .Describe("forecastFiring", Tags.HeatWork)
            .Answers<ForecastAnswer>(OneLine.MediaType, HeatWorkFigure.MediaType, FitCalendar.MediaType).Problems(406, 413, 415);

    /// <summary>What a firing under way will do.</summary>
    /// <remarks>As JSON, or the log as text/csv of up to 10 MB with the rest as parameters (a kiln goes with JSON; <c>units</c> and
    /// <c>cone</c> are needed: the example is asked with <c>?units=C&amp;cone=6</c>). The log so far, the
    /// rest of the programme, the cone it is for, and the kiln where it is known: when it will end, which
    /// cone it will put down and with what probability, when the kiln may be opened, and which hold or peak would still put the cone just
    /// down. After a power cut or a firing broken off: resume or start over, with which last ramp and hold. Losses and power of the kiln
    /// are fitted to the log, and what that changed is said. Answers three lines as text/plain, a figure as image/svg+xml (log solid,
    /// forecast dashed), and a calendar as text/calendar (needs a start).</remarks>
    /// <param name="body">The log, the rest of the programme, the cone and the kiln.</param>
    /// <param name="units">With CSV: C or F, the unit of the log and of the parameters.</param>
    /// <param name="cone">With CSV: the cone that is to be put down.</param>
    /// <param name="segments">With CSV: what is left of the programme, segments of rate, target and minutes of hold with commas between
    /// them and semicolons between segments; an empty rate is as fast as possible. Left out: nothing is left, the kiln is off.</param>
    /// <param name="coolingRate">With CSV: rate of the cooling after the last segment, in units per hour.</param>
    /// <param name="start">With CSV: when the log begins: date, time and offset.</param>
    /// <param name="chart">With CSV: name of the chart, from /v1/charts.</param>
    /// <param name="thermocoupleType">With CSV: K, N, R, S or B.</param>
    /// <param name="thermocoupleStandard">With CSV: iec-60584 or astm-e230.</param>
    /// <param name="thermocoupleClass">With CSV: 1 or 2, standard or special.</param>
    /// <param name="firings">With CSV: how many firings above 1100 °C the thermocouple has seen.</param>
    /// <param name="atmosphere">With CSV: oxidation, neutral or reduction.</param>
    /// <param name="timeColumn">With CSV: name of the time column, when several could be it.</param>
    /// <param name="temperatureColumn">With CSV: name of the temperature column; needed when the log has several.</param>
    /// <param name="timeZone">With CSV: IANA name of the zone of the log's clock, such as Europe/Berlin; UTC for a clock that never
    /// changes.</param>
    /// <param name="dateOrder">With CSV: day-first or month-first, when every date of the log can be read both ways.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    /// <param name="time">The clock, for the stamp of calendar entries.</param>
    internal static async Task<IResult> Forecast(
        ForecastBody body, string? units, string? cone, string? segments, string? coolingRate, string? start, string? chart,
        string? thermocoupleType, string? thermocoupleStandard, string? thermocoupleClass, string? firings, string? atmosphere,
        string? timeColumn, string? temperatureColumn, string? timeZone, string? dateOrder, HttpRequest request, SnapshotHolder snapshots,
        TimeProvider time)
    {
        var type = Negotiation.Choose(
            request, JsonBody.MediaType, OneLine.MediaType, HeatWorkFigure.MediaType, FitCalendar.MediaType);
        var reference = snapshots.Current.Reference.HeatWork;
        Forecast forecast;
        if (body.Upload is { } upload)
        {
            var asked = new ForecastRequest
            {
                Units = units,
                Cone = SentText.Of(cone),
                Segments = Mistakes.Try(request.HttpContext, () => ForecastBody.Segments(segments)),
                CoolingRate = Mistakes.Try(request.HttpContext, () => ForecastBody.Number("coolingRate", coolingRate)),
                Start = start,
                Chart = chart,
                Atmosphere = atmosphere,
                Thermocouple = (thermocoupleType, thermocoupleStandard, thermocoupleClass, firings) is (null, null, null, null)
                    ? null
                    : new(
                        thermocoupleType, thermocoupleStandard, SentText.Of(thermocoupleClass),
                        Mistakes.Try(request.HttpContext, () => ForecastBody.Number("firings", firings))),
            };
            var reading = new LogReading(timeColumn, temperatureColumn, timeZone, dateOrder);
            if (Mistakes.Try(request.HttpContext, () => reference.Forecast(asked, reading)) is not { } log)
            {
                // Only for what is wrong with the log besides: the question is refused.
                var alone = LogUpload.Alone(reference, units, reading);
                return JsonBody.Posted((await LogUpload.ReadAsync(upload, alone, request.HttpContext.RequestAborted)).Answer);
            }

            forecast = await LogUpload.ReadAsync(upload, log, request.HttpContext.RequestAborted);
        }
        else
        {
            forecast = reference.Forecast(body.Value);
        }

        var answer = forecast.Answer;
        return type switch
        {
            OneLine.MediaType => WholeBody.Text(answer, string.Join('\n', answer.Lines) + "\n", type + Charset),
            HeatWorkFigure.MediaType => WholeBody.Text(answer, ForecastFigure.Render(forecast), type + Charset),
            FitCalendar.MediaType => WholeBody.Text(answer, ForecastCalendar.Write(forecast, time.GetUtcNow()), type + Charset),
            _ => JsonBody.Posted(answer),
        };
    }
}
