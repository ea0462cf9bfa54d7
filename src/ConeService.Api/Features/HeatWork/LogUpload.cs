using System.Buffers;
using System.IO.Pipelines;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Firing;

namespace ConeService.Api.Features.HeatWork;

/// <summary>Streams an uploaded log line by line; only the samples stay in memory.</summary>
internal static class LogUpload
{
    /// <summary>Reads a log.</summary>
    /// <exception cref="RefusedException">The log can't be used, or the upload broke off.</exception>
    public static async Task<Followed<HeatWorkAnswer>> ReadAsync(PipeReader body, UploadedLog log, CancellationToken cancel)
    {
        var line = 1;
        try
        {
            while (true)
            {
                var read = await body.ReadAsync(cancel);
                // Given back whatever happens: a buffer that is kept would break the connection for the next request.
                var (consumed, examined) = (read.Buffer.End, read.Buffer.End);
                try
                {
                    var rest = Lines(read.Buffer, log, ref line);
                    if (read.IsCompleted && !rest.IsEmpty) Line(rest, log, ref line);
                    if (read.IsCompleted || log.IsHopeless) return log.Follow();
                    if (rest.Length > UploadedLog.LongestLine) throw TooLong(line);
                    consumed = rest.Start;
                }
                finally
                {
                    body.AdvanceTo(consumed, examined);
                }
            }
        }
        catch (BadHttpRequestException broken) when (broken.StatusCode != StatusCodes.Status413PayloadTooLarge)
        {
            throw new RefusedException(new Finding("upload-truncated", $"line {line}", null, $"The upload broke off in line {line}.", ["the whole file, as long as Content-Length says"], "A connection that was lost; send it again."));
        }
    }

    private static ReadOnlySequence<byte> Lines(ReadOnlySequence<byte> buffer, UploadedLog log, ref int line)
    {
        while (!log.IsHopeless && buffer.PositionOf((byte)'\n') is { } end)
        {
            Line(buffer.Slice(0, end), log, ref line);
            buffer = buffer.Slice(buffer.GetPosition(1, end));
        }

        return buffer;
    }

    private static void Line(ReadOnlySequence<byte> bytes, UploadedLog log, ref int line)
    {
        if (bytes.Length > UploadedLog.LongestLine) throw TooLong(line);
        if (bytes.IsSingleSegment)
        {
            log.Line(bytes.FirstSpan);
        }
        else
        {
            Span<byte> whole = stackalloc byte[(int)bytes.Length];
            bytes.CopyTo(whole);
            log.Line(whole);
        }

        line++;
    }

    private static RefusedException TooLong(int line) => new(new Finding(
        "csv-malformed", $"line {line}", null, $"Line {line} is longer than {UploadedLog.LongestLine} bytes.", ["one sample a line"], "A file with other line ends, or not a CSV?"));
}
