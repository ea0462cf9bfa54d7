using Microsoft.AspNetCore.Http.Features;

namespace ConeService.Api.Operation.Signals;

/// <summary>Counts the bytes of a response as they leave, after what compresses them.</summary>
internal sealed class CountedBody : Stream
{
    private readonly Stream inner;

    private CountedBody(Stream inner) => this.inner = inner;

    /// <summary>Bytes so far.</summary>
    public long Bytes { get; private set; }

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    /// <summary>Puts a counter around the body of a response.</summary>
    public static CountedBody Put(HttpContext context)
    {
        var feature = context.Features.GetRequiredFeature<IHttpResponseBodyFeature>();
        var counted = new CountedBody(feature.Stream);
        context.Features.Set<IHttpResponseBodyFeature>(new StreamResponseBodyFeature(counted, feature));
        return counted;
    }

    public override void Flush() => inner.Flush();

    public override Task FlushAsync(CancellationToken cancellationToken) => inner.FlushAsync(cancellationToken);

    public override void Write(byte[] buffer, int offset, int count)
    {
        Bytes += count;
        inner.Write(buffer, offset, count);
    }

    public override Task WriteAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken) =>
        WriteAsync(buffer.AsMemory(offset, count), cancellationToken).AsTask();

    public override ValueTask WriteAsync(ReadOnlyMemory<byte> buffer, CancellationToken cancellationToken = default)
    {
        Bytes += buffer.Length;
        return inner.WriteAsync(buffer, cancellationToken);
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();
}
