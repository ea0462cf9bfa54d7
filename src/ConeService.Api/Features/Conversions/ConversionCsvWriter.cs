using System.Globalization;
using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Contract.Conversions;
using ConeService.Data;
using CsvHelper;

namespace ConeService.Api.Features.Conversions;

/// <summary>
/// Writes conversions as CSV: the cells as sent, in their places, then what was found. Cones are written <c>cone 06</c>, which no
/// spreadsheet takes for a number; every other cell of the sender is carried through unaltered, unless a spreadsheet would run it.
/// </summary>
internal static class ConversionCsvWriter
{
    private const string Number = "line";

    private static readonly string[] Results =
    [
        "celsius", "fahrenheit", "reached", "next", "fraction", "margin_celsius_difference", "answered_chart", "rate_celsius_per_hour",
        "sigma_celsius_difference", "basis", "confidence", "sources", "assumed", "notes", "warning", "dataset_version",
        "problem", "problem_detail", "file_line",
    ];

    /// <summary>Writes an answer.</summary>
    /// <param name="body">The request.</param>
    /// <param name="answer">The answer.</param>
    public static string Write(ConversionBody body, ConversionAnswer answer)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using var csv = CsvWriter.Create(text, Csv.Writing, leaveOpen: true);
        var sent = body.Sheet?.Columns ?? [];
        var columns = sent.Concat(ConversionSheet.Known.Except(sent)).ToList();
        csv.WriteRecord([Own(Number, sent), .. columns.Select(Csv.Inert), .. Results.Select(r => Own(r, sent))]);
        foreach (var (index, result) in answer.Lines.Index())
        {
            csv.WriteField(result.Line);
            foreach (var (place, column) in columns.Index()) csv.WriteField(Csv.Inert(Cell(body, index, place, column)));
            WriteResult(csv, result);
            csv.WriteField(Warning(body, answer, index));
            csv.WriteField(answer.DatasetVersion);
            csv.WriteField(string.Join(" ", result.Problems.Select(p => p.Code)));
            csv.WriteField(result.Problems.Count > 0 ? ProblemWriter.Detail(result.Problems, result.MoreProblems) : null);
            csv.WriteField(result.FileLine);
            csv.EndRecord();
        }

        csv.Flush();
        return text.ToString();
    }

    // A column of the sender's keeps its name, so a column of the answer that has the same name takes another.
    private static string Own(string name, IReadOnlyList<string> sent) =>
        sent.Any(s => string.Equals(s.Trim(), name, StringComparison.OrdinalIgnoreCase)) ? "answer_" + name : name;

    private static string? Cell(ConversionBody body, int index, int place, string column)
    {
        var line = body.Value.Lines![index];
        if (column == ConversionSheet.Cone) return Csv.ConeAsSent(line?.Cone.Text);
        if (body.Sheet is { } sheet) return place < sheet.Rows[index].Count ? sheet.Rows[index][place] : null;
        return column switch
        {
            ConversionSheet.Temperature => line?.Temperature.Text,
            ConversionSheet.Rate => line?.Rate.Text,
            _ => line?.Chart.Text,
        };
    }

    private static string? Warning(ConversionBody body, ConversionAnswer answer, int index) => body.Sheet is { } sheet
        ? string.Join(" ", answer.Warnings.Where(w => w.Lines.Contains(sheet.Lines[index])).Select(w => $"{w.Code}: {w.Message}"))
        : null;

    private static void WriteResult(CsvWriter csv, ConversionResult result)
    {
        var (point, reading) = (result.EndPoint, result.Reading);
        csv.WriteField(point?.Celsius ?? reading?.Celsius);
        csv.WriteField(point?.Fahrenheit ?? reading?.Fahrenheit);
        csv.WriteField(Csv.Cone(reading?.Reached));
        csv.WriteField(Csv.Cone(reading?.Next));
        csv.WriteField(reading?.Fraction);
        csv.WriteField(reading?.MarginCelsiusDifference);
        csv.WriteField(point?.Chart ?? reading?.Chart);
        csv.WriteField(point?.RateCelsiusPerHour ?? reading?.RateCelsiusPerHour);
        csv.WriteField(point?.SigmaCelsiusDifference);
        csv.WriteField((point?.Basis ?? reading?.Basis) is { } basis ? EnumWords.Word(basis) : null);
        csv.WriteField((point?.Confidence ?? reading?.Confidence) is { } confidence ? EnumWords.Word(confidence) : null);
        csv.WriteField(string.Join(" ", point?.Sources ?? reading?.Sources ?? []));
        csv.WriteField(string.Join(" ", (point?.Assumed ?? reading?.Assumed ?? []).Select(a => $"{a.Parameter}={a.Value}")));
        csv.WriteField(string.Join(" ", point?.Notes ?? reading?.Notes ?? []));
    }
}
