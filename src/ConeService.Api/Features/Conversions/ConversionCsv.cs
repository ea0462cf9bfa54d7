using System.Globalization;
using System.Text;
using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Conversions;
using ConeService.Contract.Quantities;
using ConeService.Firing.Cones.Conversions;
using CsvHelper;

namespace ConeService.Api.Features.Conversions;

/// <summary>Conversions as CSV, in and out.</summary>
internal static class ConversionCsv
{
    private static readonly string[] Columns = ["cone", "temperature", "rate", "chart"];

    private static readonly string[] OutputColumns =
    [
        "line", .. Columns, "celsius", "fahrenheit", "reached", "next", "fraction", "margin_celsius", "answered_chart", "rate_celsius_per_hour",
        "sigma_celsius", "basis", "confidence", "sources", "assumed", "notes", "dataset_version", "problem", "problem_detail",
    ];

    /// <summary>Reads a request.</summary>
    /// <exception cref="RefusedException">Wrong headers, text that is not UTF-8, or a line with too many cells.</exception>
    public static async Task<ConversionBody> ReadAsync(HttpRequest request)
    {
        try
        {
            using var text = new StreamReader(request.Body, new UTF8Encoding(false, throwOnInvalidBytes: true));
            using var reader = CsvReader.FromText(await text.ReadToEndAsync(request.HttpContext.RequestAborted), Csv.Reading);
            if (!reader.Read()) throw new RefusedException(new Finding("empty-request", "body", null, "The CSV is empty.", [Header]));
            var columns = ReadHeader(Cells(reader));
            var lines = new List<ConversionLine?>();
            var rows = new List<long>();
            while (reader.Read())
            {
                var cells = Cells(reader);
                // An empty line holds nothing to drop; editors leave one at the end.
                if (cells is [] or [""]) continue;
                if (cells.Length > columns.Length) throw TooManyCells(reader.LineNumber, cells, columns);
                lines.Add(Line(columns, cells));
                rows.Add(reader.LineNumber);
            }

            return new(new(lines), rows);
        }
        catch (CsvFormatException failure)
        {
            throw Malformed($"Line {failure.LineNumber} can't be read.");
        }
        catch (DecoderFallbackException)
        {
            throw Malformed("The CSV is not UTF-8.");
        }
    }

    /// <summary>Writes an answer: the cells as sent, then what was found.</summary>
    public static string Write(ConversionRequest request, ConversionAnswer answer)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using var csv = CsvWriter.Create(text, Csv.Writing, leaveOpen: true);
        csv.WriteRecord(OutputColumns);
        foreach (var (line, result) in request.Lines!.Zip(answer.Lines))
        {
            csv.WriteField(result.Line);
            foreach (var sent in new[] { line?.Cone, line?.Temperature, line?.Rate, line?.Chart }) csv.WriteField(sent?.Text);
            WriteResult(csv, result);
            csv.WriteField(answer.DatasetVersion);
            csv.WriteField(string.Join(" ", result.Problems.Select(p => p.Code)));
            csv.WriteField(result.Problems.Count > 0 ? ProblemWriter.Detail(result.Problems) : null);
            csv.EndRecord();
        }

        csv.Flush();
        return text.ToString();
    }

    private static string Header => string.Join(",", Columns);

    private static string[] Cells(CsvReader reader) => [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetString)];

    private static void WriteResult(CsvWriter csv, ConversionResult result)
    {
        var (point, reading) = (result.EndPoint, result.Reading);
        csv.WriteField(point?.Celsius ?? reading?.Celsius);
        csv.WriteField(point?.Fahrenheit ?? reading?.Fahrenheit);
        csv.WriteField(reading?.Reached);
        csv.WriteField(reading?.Next);
        csv.WriteField(reading?.Fraction);
        csv.WriteField(reading?.MarginCelsius);
        csv.WriteField(point?.Chart ?? reading?.Chart);
        csv.WriteField(point?.RateCelsiusPerHour ?? reading?.RateCelsiusPerHour);
        csv.WriteField(point?.SigmaCelsius);
        csv.WriteField((point?.Basis ?? reading?.Basis)?.ToString().ToLowerInvariant());
        csv.WriteField(point is null ? null : System.Text.Json.JsonNamingPolicy.KebabCaseLower.ConvertName(point.Confidence.ToString()));
        csv.WriteField(string.Join(" ", point?.Sources ?? reading?.Sources ?? []));
        csv.WriteField(string.Join(" ", (point?.Assumed ?? reading?.Assumed ?? []).Select(a => $"{a.Parameter}={a.Value}")));
        csv.WriteField(string.Join(" ", point?.Notes ?? reading?.Notes ?? []));
    }

    private static string[] ReadHeader(string[] record)
    {
        var columns = record.Select(c => c.Trim().ToLowerInvariant()).ToArray();
        var findings = columns.Where(c => !Columns.Contains(c)).Select(c => new Finding(
            "csv-headers", "line 1", c, c.Length == 0 ? "A column has no name." : $"There is no column “{c}”.", [.. Columns],
            NearMatches.Find(c, Columns) is [var near, ..] ? $"Probably {near}." : columns.Length == 1 ? "Is the first line a header, with commas between the names?" : null)).ToList();
        findings.AddRange(columns.CountBy(c => c).Where(c => c.Value > 1).Select(c => new Finding("csv-headers", "line 1", c.Key, $"The column {c.Key} stands {c.Value} times.", [.. Columns])));
        if (findings.Count == 0 && !columns.Contains("cone") && !columns.Contains("temperature"))
        {
            findings.Add(new("csv-headers", "line 1", string.Join(",", record), "Neither cone nor temperature is among the columns.", [Header]));
        }

        return findings.Count == 0 ? columns : throw new RefusedException(findings);
    }

    private static ConversionLine Line(string[] columns, string[] record)
    {
        SentText Cell(string name) => Array.IndexOf(columns, name) is var i and >= 0 && i < record.Length ? SentText.Of(record[i]) : default;
        return new(Cell("cone"), Cell("temperature"), Cell("rate"), Cell("chart"));
    }

    private static RefusedException TooManyCells(long row, string[] record, string[] columns) => new(new Finding(
        "csv-malformed", $"line {row}", string.Join(",", record), $"Line {row} has {record.Length} cells for {columns.Length} columns.", [string.Join(",", columns)],
        "A comma inside a number? Write decimals with a point."));

    private static RefusedException Malformed(string message) => new(new Finding("csv-malformed", "body", null, message, ["RFC 4180 CSV in UTF-8"], "A quotation mark without its partner, or a file saved in another encoding."));
}
