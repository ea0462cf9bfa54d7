using System.Globalization;
using ConeService.Firing.Uploads;
using CsvHelper;

namespace ConeService.Api.Http;

/// <summary>CSV at the edges of the service: RFC 4180, UTF-8, invariant culture.</summary>
internal static class Csv
{
    public const string MediaType = "text/csv";

    /// <summary>How a request body is read. Blank lines are reported by line number, so they are not passed over here.</summary>
    public static CsvReaderOptions Reading { get; } = CsvReading.Options();

    /// <summary>How an answer is written: lines end in LF.</summary>
    public static CsvWriterOptions Writing { get; } =
        new() { HasHeader = false, NewLine = "\n", FormatProvider = CultureInfo.InvariantCulture };
}
