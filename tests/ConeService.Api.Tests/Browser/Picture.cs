using System.Buffers.Binary;
using System.IO.Compression;

namespace ConeService.Api.Tests.Browser;

/// <summary>The pixels of a screenshot: a PNG of 8 bits a channel, not interlaced, as Chromium writes it.</summary>
internal sealed class Picture
{
    private readonly byte[] pixels;
    private readonly int channels;

    /// <summary>Reads a picture.</summary>
    /// <param name="png">The file.</param>
    /// <param name="rows">How many rows to keep, from the top.</param>
    public Picture(byte[] png, int rows)
    {
        using var packed = new MemoryStream();
        var header = default(ReadOnlySpan<byte>);
        // Chunks: length, type, data, check sum; the signature before them takes 8 bytes.
        for (int at = 8, length; at < png.Length; at += length + 12)
        {
            length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            var type = png.AsSpan(at + 4, 4);
            var data = png.AsSpan(at + 8, length);
            if (type.SequenceEqual("IHDR"u8)) header = data;
            else if (type.SequenceEqual("IDAT"u8)) packed.Write(data);
        }

        (Width, Height) = (BinaryPrimitives.ReadInt32BigEndian(header), BinaryPrimitives.ReadInt32BigEndian(header[4..]));
        Assert.True(header[8] == 8 && header[9] is 2 or 6 && header[12] == 0, "Not a PNG of the kind that is read here.");
        Assert.InRange(rows, 1, Height);
        Height = rows;
        channels = header[9] == 2 ? 3 : 4;
        packed.Position = 0;
        pixels = Unfilter(packed, Width * channels);
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>Share of the pixels that differ plainly from another picture's; a shade more or less does not count.</summary>
    public double Difference(Picture other)
    {
        const int Plainly = 48;
        Assert.Equal((Width, Height, channels), (other.Width, other.Height, other.channels));
        var differing = Enumerable.Range(0, Width * Height)
            .Count(pixel => Enumerable.Range(pixel * channels, channels).Any(i => Math.Abs(pixels[i] - other.pixels[i]) > Plainly));
        return (double)differing / (Width * Height);
    }

    // Each row says how its bytes were predicted from the left, from above, and from above left (PNG, section 9).
    private byte[] Unfilter(Stream packed, int row)
    {
        using var stream = new ZLibStream(packed, CompressionMode.Decompress);
        var result = new byte[row * Height];
        for (var y = 0; y < Height; y++)
        {
            var filter = stream.ReadByte();
            stream.ReadExactly(result, y * row, row);
            for (var x = 0; x < row; x++)
            {
                int left = x >= channels ? result[(y * row) + x - channels] : 0;
                int above = y > 0 ? result[((y - 1) * row) + x] : 0;
                int corner = x >= channels && y > 0 ? result[((y - 1) * row) + x - channels] : 0;
                var predicted = filter switch { 1 => left, 2 => above, 3 => (left + above) / 2, 4 => Paeth(left, above, corner), _ => 0 };
                result[(y * row) + x] += (byte)predicted;
            }
        }

        return result;
    }

    private static int Paeth(int left, int above, int corner)
    {
        var (a, b, c) = (Math.Abs(above - corner), Math.Abs(left - corner), Math.Abs(left + above - corner - corner));
        return a <= b && a <= c ? left : b <= c ? above : corner;
    }
}
