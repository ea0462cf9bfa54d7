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
    public static async Task<Followed<HeatWorkAnswer>> ReadAsync(PipeReader body, UploadedLog log, CancellationToken cancel)
    {
        try
        {
            return await log.FollowAsync(body, cancel);
        }
        catch (BadHttpRequestException broken) when (broken.StatusCode != StatusCodes.Status413PayloadTooLarge)
        {
            throw new RefusedException(new Finding(
                FindingCodes.UploadTruncated, $"line {log.NextLine}", null, Message.Of("logs.upload-truncated", ("line", log.NextLine)),
                [Message.Of("logs.whole-file")], Message.Of("logs.connection-lost")));
        }
    }
}
