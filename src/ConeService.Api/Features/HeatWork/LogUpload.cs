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
