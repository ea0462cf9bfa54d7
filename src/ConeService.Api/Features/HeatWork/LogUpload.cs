using System.IO.Pipelines;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Firing;

namespace ConeService.Api.Features.HeatWork;

/// <summary>Streams an uploaded log row by row; only the samples stay in memory.</summary>
internal static class LogUpload
{
    /// <summary>Reads a log.</summary>
    /// <exception cref="RefusedException">The log can't be used, or the upload broke off.</exception>
    public static Task<Followed<HeatWorkAnswer>> ReadAsync(PipeReader body, UploadedLog log, CancellationToken cancel) =>
        ReadAsync(() => log.FollowAsync(body, cancel), () => log.NextLine);

    /// <summary>Reads the log of a firing under way.</summary>
    /// <exception cref="RefusedException">The log can't be used, or the upload broke off.</exception>
    public static Task<Forecast> ReadAsync(PipeReader body, UploadedForecast log, CancellationToken cancel) =>
        ReadAsync(() => log.AnswerAsync(body, cancel), () => log.NextLine);

    /// <summary>A log whose question is refused, to be read for what is wrong with it besides; what of the parameters can't be used is
    /// left out.</summary>
    /// <param name="reference">Reads it.</param>
    /// <param name="units">The parameter.</param>
    /// <param name="reading">The parameters that say how it is read.</param>
    public static UploadedLog Alone(HeatWorkReference reference, string? units, LogReading reading)
    {
        var settings = new HeatWorkRequest { Units = units is "C" or "F" ? units : null };
        try
        {
            return reference.Upload(settings, reading);
        }
        catch (RefusedException)
        {
            return reference.Upload(settings, new(reading.TimeColumn, reading.TemperatureColumn, null, null));
        }
    }

    private static async Task<T> ReadAsync<T>(Func<Task<T>> read, Func<int> nextLine)
    {
        try
        {
            return await read();
        }
        catch (BadHttpRequestException broken) when (broken.StatusCode != StatusCodes.Status413PayloadTooLarge)
        {
            throw new RefusedException(new Finding(
                FindingCodes.UploadTruncated, $"line {nextLine()}", null, Message.Of("logs.upload-truncated", ("line", nextLine())),
                [Message.Of("logs.whole-file")], Message.Of("logs.connection-lost")));
        }
    }
}
