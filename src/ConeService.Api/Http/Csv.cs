using System.Globalization;
using ConeService.Contract.Cones;
using CsvHelper;

namespace ConeService.Api.Http;

/// <summary>CSV at the edges of the service: RFC 4180, UTF-8, invariant culture.</summary>
internal static class Csv
{
    public const string MediaType = "text/csv";

    // By which a spreadsheet knows a formula; the last two are passed over by some before they look.
    private const string Running = "=+-@\t\r";

    /// <summary>How an answer is written: lines end in LF.</summary>
    public static CsvWriterOptions Writing { get; } =
        new() { HasHeader = false, NewLine = "\n", FormatProvider = CultureInfo.InvariantCulture };

    /// <summary>A cone as a cell: <c>cone 06</c>, which a spreadsheet does not make the number 6 of; null for none.</summary>
    public static string? Cone(string? cone) => cone is null ? null : "cone " + cone;

    /// <summary>The same for what a caller sent; text that is no cone is left as it is.</summary>
    public static string? ConeAsSent(string? text) => ConeSpelling.TryRead(text, out var cone, out _) ? Cone(cone.ToString()) : text;

    /// <summary>
    /// A cell that a caller sent, as it may stand in an answer: where a spreadsheet would run it as a formula it gets an apostrophe before
    /// it. Numbers with a sign stay numbers, and a dash alone a dash.
    /// </summary>
    public static string? Inert(string? sent) =>
        sent is { Length: > 1 } && Running.Contains(sent[0])
            && !decimal.TryParse(sent.Trim(), NumberStyles.Float, CultureInfo.InvariantCulture, out _)
            && !decimal.TryParse(sent.Trim().Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out _)
        ? "'" + sent
        : sent;
}
