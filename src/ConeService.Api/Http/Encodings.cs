using System.IO.Compression;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace ConeService.Api.Http;

/// <summary>The content codings of a body (RFC 9110, 8.4), and which of them a caller likes best.</summary>
internal static class Encodings
{
    public const string Brotli = "br";
    public const string Gzip = "gzip";

    /// <summary>Below this a body fits the first packet whole, bytes; compressing it gains nothing.</summary>
    public const int LeastBytes = 512;

    // Of the eleven steps of Brotli the last two take ten times as long for the last few percent.
    private const int BrotliQuality = 9;
    private const int BrotliWindow = 22;

    /// <summary>The coding for an Accept-Encoding header; null for none.</summary>
    public static string? Choose(StringValues accepted)
    {
        if (!StringWithQualityHeaderValue.TryParseList(accepted, out var wanted)) return null;
        var (brotli, gzip) = (Quality(Brotli), Quality(Gzip));
        var best = Math.Max(brotli, gzip);
        // No coding at all is always acceptable, but liked best only where it is named (RFC 9110, 12.5.3).
        if (best <= 0 || Named("identity") > best) return null;
        return brotli >= gzip ? Brotli : Gzip;

        double Quality(string coding) => Named(coding) ?? Named("*") ?? 0;
        double? Named(string coding) =>
            wanted.FirstOrDefault(w => w.Value.Equals(coding, StringComparison.OrdinalIgnoreCase)) is { } found ? found.Quality ?? 1 : null;
    }

    /// <summary>A body in a coding.</summary>
    public static byte[] Encode(byte[] bytes, string coding)
    {
        if (coding == Brotli)
        {
            var into = new byte[BrotliEncoder.GetMaxCompressedLength(bytes.Length)];
            return BrotliEncoder.TryCompress(bytes, into, out var written, BrotliQuality, BrotliWindow)
                ? into[..written]
                : throw new InvalidOperationException("The longest a body can become was not long enough.");
        }

        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.SmallestSize)) gzip.Write(bytes);
        return packed.ToArray();
    }
}
