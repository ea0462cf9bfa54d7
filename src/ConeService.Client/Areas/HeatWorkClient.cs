using System.Buffers;
using System.IO.Pipelines;
using ConeService.Client.Asking;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;

namespace ConeService.Client;

/// <summary>What firings did to the cones, and what puts one down. Raises <see cref="RefusedException"/> and
/// <see cref="ConeServiceAwayException"/>.</summary>
public interface IHeatWorkClient
{
    /// <summary>What a programme or a log did to the cones.</summary>
    /// <param name="request">The programme or the log; temperatures in the request's units.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<HeatWorkAnswer>> FollowAsync(HeatWorkRequest request, CancellationToken cancel = default);

    /// <summary>Which peak, hold or rate puts a cone just down.</summary>
    /// <param name="request">The programme, the cone and what is asked for.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<SolveAnswer>> SolveAsync(SolveRequest request, CancellationToken cancel = default);

    /// <summary>How far the meter is off, by witness cones.</summary>
    /// <param name="request">The firings with their witness cones.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<CompareAnswer>> CompareAsync(CompareRequest request, CancellationToken cancel = default);

    /// <summary>What a firing under way will do, and what would still change it.</summary>
    /// <param name="request">The log so far, what is left of the programme, the cone and the kiln.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<ForecastAnswer>> ForecastAsync(ForecastRequest request, CancellationToken cancel = default);

    /// <summary>What a firing did to the cones, by the log of its controller.</summary>
    /// <param name="log">The file as it is, CSV of up to 10 MB.</param>
    /// <param name="settings">How it was measured and is to be read.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<HeatWorkAnswer>> FollowLogAsync(
        ReadOnlyMemory<byte> log, LogSettings settings, CancellationToken cancel = default);

    /// <summary>What a firing under way will do, by the log of its controller. A kiln goes with
    /// <see cref="ForecastAsync(ForecastRequest, CancellationToken)"/>.</summary>
    /// <param name="log">The file as it is, CSV of up to 10 MB; its last line is now.</param>
    /// <param name="asked">The cone, and what is left of the programme.</param>
    /// <param name="settings">How it was measured and is to be read.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<ForecastAnswer>> ForecastLogAsync(
        ReadOnlyMemory<byte> log, LogForecast asked, LogSettings settings, CancellationToken cancel = default);
}

internal sealed class HeatWorkClient(IAnswerer answerer) : IHeatWorkClient
{
    public Task<Answered<HeatWorkAnswer>> FollowAsync(HeatWorkRequest request, CancellationToken cancel) => answerer.AskAsync(
        new Question<HeatWorkAnswer>("/v1/heat-work", (r, _) => r.HeatWork.Follow(request).Answer)
        {
            Check = () => HeatWorkCheck.Require(request),
            IsLong = true,
        }.With(request),
        cancel);

    public Task<Answered<SolveAnswer>> SolveAsync(SolveRequest request, CancellationToken cancel) => answerer.AskAsync(
        new Question<SolveAnswer>("/v1/heat-work/solve", (r, _) => r.HeatWork.Solve(request).Answer)
        {
            Check = () => HeatWorkCheck.Require(request),
            IsLong = true,
        }.With(request),
        cancel);

    public Task<Answered<CompareAnswer>> CompareAsync(CompareRequest request, CancellationToken cancel) => answerer.AskAsync(
        new Question<CompareAnswer>("/v1/heat-work/compare", (r, _) => r.HeatWork.Compare(request).Answer)
        {
            Check = () => HeatWorkCheck.Require(request),
            IsLong = true,
        }.With(request),
        cancel);

    public Task<Answered<ForecastAnswer>> ForecastAsync(ForecastRequest request, CancellationToken cancel) => answerer.AskAsync(
        new Question<ForecastAnswer>("/v1/heat-work/forecast", (r, _) => r.HeatWork.Forecast(request).Answer)
        {
            Check = () => ForecastCheck.Require(request),
            IsLong = true,
        }.With(request),
        cancel);

    public Task<Answered<HeatWorkAnswer>> FollowLogAsync(ReadOnlyMemory<byte> log, LogSettings settings, CancellationToken cancel)
    {
        var request = new HeatWorkRequest
        {
            Units = settings.Units,
            Chart = settings.Chart,
            Atmosphere = settings.Atmosphere,
            Thermocouple = settings.Thermocouple ?? new(),
        };
        return answerer.AskAsync(
            new Question<HeatWorkAnswer>(
                Addresses.Of("/v1/heat-work", [.. settings.Parameters]),
                async (r, _) => (await r.HeatWork.Upload(request, settings.Reading).FollowAsync(Read(log), cancel)).Answer)
            {
                Check = () => LogSettings.Require(log),
                IsLong = true,
            }.With(log),
            cancel);
    }

    public Task<Answered<ForecastAnswer>> ForecastLogAsync(
        ReadOnlyMemory<byte> log, LogForecast asked, LogSettings settings, CancellationToken cancel)
    {
        var request = asked.Request(settings);
        return answerer.AskAsync(
            new Question<ForecastAnswer>(
                Addresses.Of("/v1/heat-work/forecast", [.. asked.Parameters, .. settings.Parameters]),
                async (r, _) => (await r.HeatWork.Forecast(request, settings.Reading).AnswerAsync(Read(log), cancel)).Answer)
            {
                Check = () => LogSettings.Require(log),
                IsLong = true,
            }.With(log),
            cancel);
    }

    private static PipeReader Read(ReadOnlyMemory<byte> log) => PipeReader.Create(new ReadOnlySequence<byte>(log));
}
