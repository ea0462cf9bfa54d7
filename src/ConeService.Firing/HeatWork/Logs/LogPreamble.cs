using System.IO.Pipelines;
using System.Text;
using ConeService.Firing.Uploads;
using CsvHelper;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>Where the header of a log begins.</summary>
/// <param name="Separator">What stands between the cells of the header.</param>
/// <param name="Bytes">Bytes before it.</param>
/// <param name="Lines">Lines before it that are not blank.</param>
/// <param name="AllLines">Lines before it.</param>
internal readonly record struct LogPreamble(char Separator, int Bytes, int Lines, int AllLines)
{
    // Loggers write a few lines on themselves before the header.
    private const int Longest = 16_384;
    private const int MostLines = 60;

    /// <summary>The log as UTF-8, whatever it came as.</summary>
    /// <param name="body">The log, at its start.</param>
    /// <param name="cancel">Breaks off.</param>
    public static async ValueTask<(PipeReader Body, Stream? Converted)> AsUtf8Async(PipeReader body, CancellationToken cancel)
    {
        var read = await body.ReadAtLeastAsync(4, cancel);
        var start = new byte[Math.Min(read.Buffer.Length, 4)];
        System.Buffers.BuffersExtensions.CopyTo(read.Buffer.Slice(0, start.Length), start);
        body.AdvanceTo(read.Buffer.Start, read.Buffer.Start);
        // Without a mark every second byte of a header in UTF-16 is zero.
        var encoding = start switch
        {
            [0xFF, 0xFE, ..] or [not 0, 0, not 0, 0] => Encoding.Unicode,
            [0xFE, 0xFF, ..] or [0, not 0, 0, not 0] => Encoding.BigEndianUnicode,
            _ => null,
        };
        if (encoding is null) return (body, null);
        var converted = Encoding.CreateTranscodingStream(body.AsStream(leaveOpen: true), encoding, Encoding.UTF8);
        return (PipeReader.Create(converted), converted);
    }

    /// <summary>Looks for the header without taking it.</summary>
    /// <param name="body">The log, UTF-8, at its start; left there.</param>
    /// <param name="cancel">Breaks off.</param>
    public static async ValueTask<LogPreamble> FindAsync(PipeReader body, CancellationToken cancel)
    {
        while (true)
        {
            var read = await body.ReadAsync(cancel);
            var (start, end) = (read.Buffer.Start, read.Buffer.End);
            var head = System.Buffers.BuffersExtensions.ToArray(read.Buffer.Slice(0, Math.Min(read.Buffer.Length, Longest)));
            var whole = read.IsCompleted || head.Length == Longest;
            var found = TryFind(head, whole, out var preamble);
            // Examined up to the start only: what follows reads the same bytes at once.
            body.AdvanceTo(start, found ? start : end);
            if (found) return preamble;
        }
    }

    internal static bool TryFind(ReadOnlySpan<byte> head, bool whole, out LogPreamble found)
    {
        var (at, lines, all) = (0, 0, 0);
        while (at < head.Length && all < MostLines)
        {
            var rest = head[at..];
            var end = rest.IndexOfAny((byte)'\n', (byte)'\r');
            if (end < 0 && !whole) break;
            var line = end < 0 ? rest : rest[..end];
            if (IsHeader(line, out var separator))
            {
                found = new(separator, at, lines, all);
                return true;
            }

            if (!line.Trim(" \t\uFEFF"u8).IsEmpty) lines++;
            if (end < 0) break;
            at += end + (rest[end] == (byte)'\r' && end + 1 < rest.Length && rest[end + 1] == (byte)'\n' ? 2 : 1);
            all++;
        }

        // No header: the first line is told what it lacks.
        var chosen = CsvSeparator.TryChoose(head, out var first);
        found = new(first, 0, 0, 0);
        return whole || (chosen && all >= MostLines);
    }

    private static bool IsHeader(ReadOnlySpan<byte> line, out char separator)
    {
        CsvSeparator.TryChoose(line, out separator);
        if (line.Length > CsvLogReader.LongestLine) return false;
        var text = Encoding.UTF8.GetString(line).TrimStart('\uFEFF');
        if (text.Length == 0 || text[0] == '#') return false;
        try
        {
            using var csv = CsvReader.FromText(text, CsvReading.Options(separator));
            return csv.Read() && LogColumns.IsHeader([.. Enumerable.Range(0, csv.FieldCount).Select(csv.GetString)]);
        }
        catch (CsvFormatException)
        {
            return false;
        }
    }
}
