using System.Globalization;
using System.Text;
using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Contract.Answers;
using ConeService.Contract.Conversions;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;
using CsvHelper;

namespace ConeService.Api.Features.Conversions;

/// <summary>Conversions as CSV, in and out.</summary>
internal static class ConversionCsv
{
    private static readonly string[] Columns = ["cone", "temperature", "rate", "chart"];

    private static readonly string[] OutputColumns =
    [
        "line", .. Columns, "celsius", "fahrenheit", "reached", "next", "fraction", "margin_celsius",
        "answered_chart", "rate_celsius_per_hour",
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
            if (!reader.Read())
            {
                throw new RefusedException(new Finding(
                    FindingCodes.EmptyRequest, "", null, Message.Of("conversions.csv-empty"), Message.Verbatim([Header])));
            }

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
            throw Malformed(Message.Of("conversions.csv-line-unreadable", ("line", failure.LineNumber)));
        }
        catch (DecoderFallbackException)
        {
            throw Malformed(Message.Of("conversions.csv-not-utf8"));
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
        csv.WriteField(reading?.MarginCelsiusDifference);
        csv.WriteField(point?.Chart ?? reading?.Chart);
        csv.WriteField(point?.RateCelsiusPerHour ?? reading?.RateCelsiusPerHour);
        csv.WriteField(point?.SigmaCelsiusDifference);
        csv.WriteField((point?.Basis ?? reading?.Basis) is { } basis ? EnumWords.Word(basis) : null);
        csv.WriteField(point is null ? null : EnumWords.Word(point.Confidence));
        csv.WriteField(string.Join(" ", point?.Sources ?? reading?.Sources ?? []));
        csv.WriteField(string.Join(" ", (point?.Assumed ?? reading?.Assumed ?? []).Select(a => $"{a.Field}={a.Value}")));
        csv.WriteField(string.Join(" ", point?.Notes ?? reading?.Notes ?? []));
    }

    private static string[] ReadHeader(string[] record)
    {
        var columns = record.Select(c => c.Trim().ToLowerInvariant()).ToArray();
        var findings = columns.Where(c => !Columns.Contains(c)).Select(c => new Finding(
            FindingCodes.CsvHeaders, "line 1", c,
            c.Length == 0 ? Message.Of("conversions.column-without-name") : Message.Of("conversions.column-unknown", ("column", c)),
            Message.Verbatim(Columns),
            NearMatches.Probably(c, Columns) ?? (columns.Length == 1 ? Message.Of("conversions.header-missing") : null))).ToList();
        findings.AddRange(columns.CountBy(c => c).Where(c => c.Value > 1).Select(c => new Finding(
            FindingCodes.CsvHeaders, "line 1", c.Key, Message.Of("conversions.column-repeated", ("column", c.Key), ("count", c.Value)),
            Message.Verbatim(Columns))));
        if (findings.Count == 0 && !columns.Contains("cone") && !columns.Contains("temperature"))
        {
            findings.Add(new(
                FindingCodes.CsvHeaders, "line 1", string.Join(",", record),
                Message.Of("conversions.columns-missing"), Message.Verbatim([Header])));
        }

        return findings.Count == 0 ? columns : throw new RefusedException(findings);
    }

    private static ConversionLine Line(string[] columns, string[] record)
    {
        SentText Cell(string name) =>
            Array.IndexOf(columns, name) is var i and >= 0 && i < record.Length ? SentText.Of(record[i]) : default;
        return new(Cell("cone"), Cell("temperature"), Cell("rate"), Cell("chart"));
    }

    private static RefusedException TooManyCells(long row, string[] record, string[] columns) => new(new Finding(
        FindingCodes.CsvMalformed, $"line {row}", string.Join(",", record),
        Message.Of("conversions.too-many-cells", ("line", row), ("cells", record.Length), ("columns", columns.Length)),
        Message.Verbatim([string.Join(",", columns)]), Message.Of("conversions.comma-in-number")));

    private static RefusedException Malformed(Message message) => new(new Finding(
        FindingCodes.CsvMalformed, "", null, message,
        [Message.Of("conversions.csv-allowed")], Message.Of("conversions.csv-malformed")));
}
