using System.IO.Pipelines;

namespace ConeService.Api.Features.HeatWork;

/// <summary>
/// Takes an upload in before it is computed on: a place among the computations is not held by who sends slowly. At most as many bytes
/// as <see cref="UploadLimit"/> allows, in blocks of a pool.
/// </summary>
internal static class WholeUpload
{
    // Without a threshold the writer never waits for a reader that starts when all is there.
    private static readonly PipeOptions Unbounded = new(pauseWriterThreshold: 0, useSynchronizationContext: false);

    /// <summary>The whole body. What breaks it off is told by the reader, behind the rows that came.</summary>
    public static async Task<PipeReader> ReadAsync(HttpRequest request)
    {
        var pipe = new Pipe(Unbounded);
        try
        {
            await request.BodyReader.CopyToAsync(pipe.Writer, request.HttpContext.RequestAborted);
            await pipe.Writer.CompleteAsync();
        }
        catch (BadHttpRequestException broken) when (broken.StatusCode != StatusCodes.Status413PayloadTooLarge)
        {
            await pipe.Writer.CompleteAsync(broken);
        }

        return pipe.Reader;
    }
}
