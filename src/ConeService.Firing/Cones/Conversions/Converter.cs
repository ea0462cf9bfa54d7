using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Conversions;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;
using ConeService.Firing.Reading;

namespace ConeService.Firing.Cones.Conversions;

/// <summary>Answers a batch of conversions; a bad line gets its problems and the good lines their answers.</summary>
/// <param name="charts">The charts.</param>
internal sealed class Converter(ConeCharts charts)
{
    private readonly EndPointCalculator endPoints = new(charts);
    private readonly ReadingCalculator readings = new(charts);

    /// <summary>Answers every line; the request as a whole must be valid (<see cref="ConversionCheck"/>).</summary>
    /// <param name="request">The request.</param>
    /// <param name="rows">Of a CSV the line of the file that each line stands in; null for JSON.</param>
    public ConversionAnswer Convert(ConversionRequest request, IReadOnlyList<long>? rows)
    {
        string FieldOf(int index, string member) => rows is null
            ? string.Create(CultureInfo.InvariantCulture, $"/lines/{index}/{member}")
            : string.Create(CultureInfo.InvariantCulture, $"line {rows[index]}, {member}");

        var budget = new FindingBudget();
        ConversionResult Listed(ConversionResult result)
        {
            var (listed, more) = budget.Share(result.Problems);
            return result with { Problems = listed, MoreProblems = more };
        }

        var results = request.Lines!.Patiently()
            .Select((line, index) => Listed(Answer(index + 1, line, request.Units, name => FieldOf(index, name))) with
            {
                FileLine = rows?[index],
            }).ToList();
        var answered = results.Count(r => r.Problems.Count == 0);
        var warning = rows is null ? null : LostZeros.Find(charts.Scale, request.Lines!.Select(l => l?.Cone ?? default), rows);
        return new(charts.Dataset.VersionId, answered, results.Count - answered, results, warning is null ? [] : [warning]);
    }

    private ConversionResult Answer(int number, ConversionLine? line, string? units, Func<string, string> field)
    {
        var findings = new List<Finding>();
        try
        {
            if (line is null || line.Cone.IsAbsent == line.Temperature.IsAbsent)
            {
                findings.Add(CheckOne(line, field));
                return new(number, null, null, findings, null);
            }

            var rate = QuantityInput.Rate(line.Rate, units, field("rate"), findings);
            var chart = Text(line.Chart, field("chart"), findings);
            var question = ConeQuestion.Read(charts, rate, chart, field("rate"), field("chart"), findings);
            return line.Cone.IsAbsent
                ? new(number, null, ReadingOf(line, units, question, field, findings), findings, null)
                : new(number, EndPointOf(line, question, field, findings), null, findings, null);
        }
        catch (RefusedException refused)
        {
            return new(number, null, null, [.. findings, .. refused.Findings], null);
        }
    }

    private EndPoint? EndPointOf(ConversionLine line, ConeQuestion? question, Func<string, string> field, List<Finding> findings)
    {
        if (!ConeInput.TryRead(charts.Scale, line.Cone, field("cone"), out var cone, out var wrong)) findings.Add(wrong!);
        return findings.Count == 0 ? endPoints.Answer(cone, question!, field("cone"), field("rate")) : null;
    }

    private ConeReading? ReadingOf(
        ConversionLine line, string? units, ConeQuestion? question, Func<string, string> field, List<Finding> findings)
    {
        var text = QuantityInput.Temperature(line.Temperature, units, field("temperature"), findings);
        Temperature temperature = default;
        if (text is not null && !Temperature.TryParse(text, out temperature, out var wrong))
        {
            findings.Add(wrong! with { Field = field("temperature") });
        }

        return findings.Count == 0 ? readings.Answer(temperature, question!, field("temperature")) : null;
    }

    private static string? Text(SentText sent, string field, List<Finding> findings)
    {
        if (sent.IsAbsent) return null;
        if (sent.Kind != SentKind.Text)
        {
            findings.Add(new(
                FindingCodes.ChartUnknown, field, sent.Text, Message.Of("conversions.chart-is-text"),
                Message.Verbatim([ConeCharts.DefaultChart])));
        }

        return sent.Text;
    }

    private static Finding CheckOne(ConversionLine? line, Func<string, string> field)
    {
        Message[] allowed = [Message.Of("conversions.a-cone"), Message.Of("conversions.a-temperature")];
        return line is null || line.Cone.IsAbsent
            ? new(FindingCodes.LineEmpty, field("cone"), null, Message.Of("conversions.line-empty"), allowed)
            : new(
                FindingCodes.LineAmbiguous, field("temperature"), line.Temperature.Text, Message.Of("conversions.line-ambiguous"), allowed);
    }
}
