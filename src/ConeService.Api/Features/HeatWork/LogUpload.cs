using System.IO.Pipelines;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
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
            throw new RefusedException(new Finding("upload-truncated", $"line {log.NextLine}", null, $"The upload broke off in line {log.NextLine}.", ["the whole file, as long as Content-Length says"], "A connection that was lost; send it again."));
        }
    }
}
