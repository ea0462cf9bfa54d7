using CsvHelper;

namespace ConeService.Firing.Uploads;

/// <summary>How every CSV that comes in from outside is read: RFC 4180, UTF-8.</summary>
public static class CsvReading
{
    /// <summary>
    /// Options of the reader. Rows come with the line they start in, blank ones too; a quotation mark without its
    /// partner, or inside a cell without quotation marks, is an error, since nothing tells where such a cell ends.
    /// </summary>
    /// <param name="separator">What stands between cells: comma, semicolon or tab.</param>
    /// <param name="longestRow">Longest row, bytes, that a stream is buffered for; null without a limit.</param>
    /// <param name="trim">False where cells are handed on: RFC 4180 counts blanks as part of a cell.</param>
    public static CsvReaderOptions Options(char separator = ',', int? longestRow = null, bool trim = true) => new()
    {
        Separator = separator,
        HasHeader = false,
        SkipEmptyLines = false,
        TrimWhitespace = trim,
        TrackLineNumbers = true,
        MaxRecordSize = longestRow,
        MalformedData = CsvMalformedDataHandling.Throw,
        FieldCountMismatch = CsvFieldCountHandling.Allow,
    };
}
