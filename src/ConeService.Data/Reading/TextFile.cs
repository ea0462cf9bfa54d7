using System.Text;

namespace ConeService.Data;

/// <summary>
/// Reads text strictly: UTF-8 without a mark, line feeds, a final newline. Anything else would make the
/// same table give different checksums and line numbers on different machines.
/// </summary>
internal static class TextFile
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    public delegate void Fault(int? line, string rule, string reason);

    /// <summary>The text with line feeds only, or null when it is not UTF-8.</summary>
    public static string? Read(byte[] bytes, Fault fault)
    {
        string text;
        try
        {
            text = Strict.GetString(bytes);
        }
        catch (DecoderFallbackException e)
        {
            var line = 1 + bytes.AsSpan(0, Math.Max(0, e.Index)).Count((byte)'\n');
            fault(line, FaultRules.Utf8, $"has the byte {Convert.ToHexString(e.BytesUnknown ?? [])}; files must be UTF-8");
            return null;
        }

        if (text.StartsWith('\uFEFF'))
        {
            fault(1, FaultRules.ByteOrderMark, "starts with a byte order mark; files must be UTF-8 without it");
            text = text[1..];
        }

        if (text.IndexOf('\r', StringComparison.Ordinal) is var at && at >= 0)
        {
            fault(1 + text.AsSpan(0, at).Count('\n'), FaultRules.LineFeedsOnly,
                "has a carriage return; lines must end with a line feed alone");
            text = text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
        }

        if (!text.EndsWith('\n'))
            fault(1 + text.AsSpan().Count('\n'), FaultRules.FinalNewline, "does not end with a line feed; the last line must");
        return text;
    }
}
