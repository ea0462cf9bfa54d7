using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using ConeService.Contract.Answers;
using ConeService.Contract.Conversions;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Firing.Uploads;
using CsvHelper;

namespace ConeService.Api.Features.Conversions;

/// <summary>Reads conversions from CSV: comma, semicolon or tab, and the sender's own columns beside those that are read.</summary>
internal static partial class ConversionCsvReader
{
    private static string Header => string.Join(",", ConversionSheet.Known);

    /// <summary>Reads a request.</summary>
    /// <exception cref="RefusedException">
    /// Wrong headers, text that is not UTF-8, a line with too many cells, or decimals that are written in two ways.
    /// </exception>
    public static async Task<ConversionBody> ReadAsync(HttpRequest request)
    {
        try
        {
            using var stream = new StreamReader(request.Body, new UTF8Encoding(false, throwOnInvalidBytes: true));
            var text = await stream.ReadToEndAsync(request.HttpContext.RequestAborted);
            var separator = CsvSeparator.Of(Encoding.UTF8.GetBytes(text));
            return Request(Read(text, separator), separator);
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

    private static ConversionSheet Read(string text, char separator)
    {
        using var reader = CsvReader.FromText(text, CsvReading.Options(separator, trim: false));
        // Lines before the header hold nothing to drop, and neither do those between and after the others.
        string[]? columns = null;
        var count = 0;
        var (rows, lines) = (new List<IReadOnlyList<string>>(), new List<long>());
        while (reader.Read())
        {
            if (reader.FieldCount > ConversionCheck.MostColumns) throw TooManyColumns(reader.LineNumber, reader.FieldCount);
            string[] cells = [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetString)];
            if (cells.All(string.IsNullOrWhiteSpace) && cells.Length < 2) continue;
            if (columns is null)
            {
                columns = ReadHeader(cells);
                continue;
            }

            if (cells.Length > columns.Length) throw TooManyCells(reader.LineNumber, cells, columns, separator);
            // Beyond the most they are only counted.
            if (++count > ConversionCheck.MostLines) continue;
            rows.Add(cells);
            lines.Add(reader.LineNumber);
        }

        if (count > ConversionCheck.MostLines) throw new RefusedException(ConversionCheck.TooManyLines(count));

        return new(
            columns ?? throw new RefusedException(new Finding(
                FindingCodes.EmptyRequest, "body", null, Message.Of("conversions.csv-empty"), Message.Verbatim([Header]))),
            rows, lines);
    }

    private static string[] ReadHeader(string[] record)
    {
        var columns = record.Select(c => c.Trim().ToLowerInvariant()).ToArray();
        var findings = columns.Where(c => c.Length == 0).Select(c => new Finding(
            FindingCodes.CsvHeaders, "line 1", c, Message.Of("conversions.column-without-name"),
            Message.Verbatim(ConversionSheet.Known))).ToList();
        findings.AddRange(columns.Where(c => c.Length > 0).CountBy(c => c).Where(c => c.Value > 1).Select(c => new Finding(
            FindingCodes.CsvHeaders, "line 1", c.Key, Message.Of("conversions.column-repeated", ("column", c.Key), ("count", c.Value)),
            Message.Verbatim(ConversionSheet.Known))));
        string[] needed = [ConversionSheet.Cone, ConversionSheet.Temperature];
        if (findings.Count == 0 && !columns.Any(needed.Contains))
        {
            findings.Add(new(
                FindingCodes.CsvHeaders, "line 1", string.Join(",", record),
                Message.Of("conversions.columns-missing"), Message.Verbatim([Header]),
                columns.Select(c => NearMatches.Probably(c, needed)).FirstOrDefault(m => m is not null)
                    ?? (columns.Any(ConversionSheet.Known.Contains) ? null : Message.Of("conversions.header-missing"))));
        }

        return findings.Count == 0
            ? [.. columns.Zip(record, (name, sent) => ConversionSheet.Known.Contains(name) ? name : sent)]
            : throw new RefusedException(findings);
    }

    private static ConversionBody Request(ConversionSheet sheet, char separator)
    {
        var decimals = new DecimalMark();
        var lines = new List<ConversionLine?>();
        foreach (var (row, line) in sheet.Rows.Zip(sheet.Lines))
        {
            SentText Cell(string name) => sheet.Place(name) is { } at && at < row.Count ? SentText.Of(row[at].Trim()) : default;
            SentText Quantity(string name) => separator == ',' ? Cell(name) : Decimal(Cell(name), line, decimals);
            lines.Add(new(
                Cell(ConversionSheet.Cone), Quantity(ConversionSheet.Temperature), Quantity(ConversionSheet.Rate),
                Cell(ConversionSheet.Chart)));
        }

        return decimals.Ambiguous(line => string.Create(CultureInfo.InvariantCulture, $"line {line}")) is { } ambiguous
            ? throw new RefusedException(ambiguous)
            : new(new(lines), sheet);
    }

    // Where commas do not separate cells they are decimal: 1213,5C.
    private static SentText Decimal(SentText sent, long line, DecimalMark decimals)
    {
        if (sent.Text is not { } text || Number().Match(text) is not { Success: true } match) return sent;
        decimals.Note(Encoding.UTF8.GetBytes(match.Value), line);
        return SentText.Of(match.Value.Replace(',', '.') + text[match.Length..]);
    }

    [GeneratedRegex(@"^[+-]?[0-9]+([.,][0-9]+)?(?![.,0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex Number();

    private static RefusedException TooManyColumns(long row, int count) => new(new Finding(
        FindingCodes.TooManyColumns, $"line {row}", null, Message.Of("conversions.too-many-columns", ("line", row), ("count", count)),
        [Message.Of("conversions.columns-allowed", ("most", ConversionCheck.MostColumns))]));

    private static RefusedException TooManyCells(long row, string[] record, string[] columns, char separator) => new(new Finding(
        FindingCodes.CsvMalformed, $"line {row}", string.Join(separator, record),
        Message.Of("conversions.too-many-cells", ("line", row), ("cells", record.Length), ("columns", columns.Length)),
        Message.Verbatim([string.Join(separator, columns)]),
        separator == ',' ? Message.Of("conversions.comma-in-number") : Message.Of("logs.separator-in-cell")));

    private static RefusedException Malformed(Message message) => new(new Finding(
        FindingCodes.CsvMalformed, "body", null, message,
        [Message.Of("conversions.csv-allowed")], Message.Of("conversions.csv-malformed")));
}
