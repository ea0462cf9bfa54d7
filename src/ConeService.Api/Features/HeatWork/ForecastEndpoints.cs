using ConeService.Api.Features.Schedules;
using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.HeatWork;

namespace ConeService.Api.Features.HeatWork;

/// <summary>What a firing under way will do.</summary>
internal static class ForecastEndpoints
{
    private const string Charset = "; charset=utf-8";

    public static void MapForecast(this IEndpointRouteBuilder routes) =>
        routes.MapPost("/heat-work/forecast", Forecast).WithQuery().WithMetadata(new UploadLimit())
            .Accepts<ForecastRequest>(JsonBody.MediaType)
            .Describe("forecastFiring", Tags.HeatWork)
            .Answers<ForecastAnswer>(OneLine.MediaType, HeatWorkFigure.MediaType, FitCalendar.MediaType).Problems(406, 413, 415);

    /// <summary>What a firing under way will do.</summary>
    /// <remarks>The log so far, the rest of the programme, the cone it is for, and the kiln where it is known: when it will end, which
    /// cone it will put down and with what probability, when the kiln may be opened, and which hold or peak would still put the cone just
    /// down. After a power cut or a firing broken off: resume or start over, with which last ramp and hold. Losses and power of the kiln
    /// are fitted to the log, and what that changed is said. Answers three lines as text/plain, a figure as image/svg+xml (log solid,
    /// forecast dashed), and a calendar as text/calendar (needs a start).</remarks>
    /// <param name="body">The log, the rest of the programme, the cone and the kiln.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    /// <param name="time">The clock, for the stamp of calendar entries.</param>
    internal static IResult Forecast(JsonRequest<ForecastRequest> body, HttpRequest request, SnapshotHolder snapshots, TimeProvider time)
    {
        var type = Negotiation.Choose(
            request, JsonBody.MediaType, OneLine.MediaType, HeatWorkFigure.MediaType, FitCalendar.MediaType);
        var forecast = snapshots.Current.Reference.HeatWork.Forecast(body.Value);
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
