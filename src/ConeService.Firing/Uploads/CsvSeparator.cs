namespace ConeService.Firing.Uploads;

/// <summary>
/// Finds what separates the cells of a file: of comma, semicolon and tab the one that stands most often in the header,
/// outside quotation marks.
/// </summary>
public static class CsvSeparator
{
    /// <summary>How far the header is looked at, bytes.</summary>
    public const int LongestHeader = 4096;

    private static readonly char[] Separators = [',', ';', '\t'];

    /// <summary>The separator of a file that is there as a whole.</summary>
    /// <param name="file">The file, UTF-8.</param>
    public static char Of(ReadOnlySpan<byte> file)
    {
        TryChoose(file.Length > LongestHeader ? file[..LongestHeader] : file, out var separator);
        return separator;
    }

    /// <summary>The separator by the first line that is not blank.</summary>
    /// <param name="head">Start of the log, UTF-8.</param>
    /// <param name="separator">The separator as far as the line is there.</param>
    /// <returns>True when the whole line is there.</returns>
    internal static bool TryChoose(ReadOnlySpan<byte> head, out char separator)
    {
        var counts = new int[Separators.Length];
        var (quoted, begun, whole) = (false, false, false);
        foreach (var at in head)
        {
            if (at == (byte)'"') quoted = !quoted;
            else if (!quoted && at is (byte)'\r' or (byte)'\n')
            {
                if (whole = begun) break;
                continue;
            }
            else if (!quoted && Array.IndexOf(Separators, (char)at) is >= 0 and var which) counts[which]++;

            // Neither blanks nor a byte order mark make a line.
            begun |= at is not ((byte)' ' or 0xEF or 0xBB or 0xBF);
        }

        separator = Separators[Array.IndexOf(counts, counts.Max())];
        return whole;
    }
}
