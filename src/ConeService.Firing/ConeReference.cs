using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Conversions;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Firing.Cones;
using ConeService.Firing.Cones.Conversions;

namespace ConeService.Firing;

/// <summary>The scale of cones, the published charts, look-ups and conversions.</summary>
public sealed class ConeReference
{
    private readonly ConeCharts charts;
    private readonly ChartDescriber describer;
    private static readonly string[] OfUnits =
        [FindingCodes.UnitsMissing, FindingCodes.TemperatureUnitMissing, FindingCodes.RateUnitMissing];

    private readonly ConeDescriber cones;
    private readonly EndPointCalculator endPoints;
    private readonly ReadingCalculator readings;
    private readonly Converter converter;

    internal ConeReference(ConeCharts charts)
    {
        this.charts = charts;
        describer = new(charts);
        cones = new(charts);
        endPoints = new(charts);
        readings = new(charts);
        converter = new(charts);
    }

    /// <summary>Id of the chart that answers where none is named.</summary>
    public string DefaultChart => charts.Default.Id;

    /// <summary>The scale, coolest first.</summary>
    public ConeList List() => describer.Scale();

    /// <summary>Reads a cone as people write it.</summary>
    /// <param name="text">Such as <c>06</c>, <c>^6</c>, <c>05½</c>.</param>
    /// <param name="parameter">Name of the parameter, for the refusal.</param>
    /// <exception cref="RefusedException">It is no cone of the scale.</exception>
    public Cone Read(string text, string parameter = "cone") =>
        charts.Scale.TryRead(text, parameter, out var cone, out var finding) ? cone : throw new RefusedException(finding!);

    /// <summary>A cone with every printed end point.</summary>
    public ConeDescription Describe(Cone cone) => cones.Describe(cone);

    /// <summary>Where a cone goes down.</summary>
    /// <param name="cone">The cone as people write it.</param>
    /// <param name="rate">Heating rate with its unit, such as <c>60C/h</c>; null: the chart's usual one.</param>
    /// <param name="chart">Id of a chart; null: <see cref="DefaultChart"/>.</param>
    /// <exception cref="RefusedException">Something can't be read, or nothing can be said; carries every finding.</exception>
    public EndPoint EndPoint(string cone, string? rate = null, string? chart = null)
    {
        var findings = new List<Finding>();
        if (!charts.Scale.TryRead(cone, "cone", out var found, out var wrong)) findings.Add(wrong!);
        var question = ConeQuestion.Read(charts, rate, chart, "rate", "chart", findings);
        return findings.Count == 0 ? endPoints.Answer(found, question!) : throw new RefusedException(findings);
    }

    /// <summary>Which cone a temperature reaches.</summary>
    /// <param name="temperature">With its unit, such as <c>1222C</c>.</param>
    /// <param name="rate">Heating rate with its unit; null: the chart's usual one.</param>
    /// <param name="chart">Id of a chart; null: <see cref="DefaultChart"/>.</param>
    /// <exception cref="RefusedException">Something can't be read, or nothing can be said; carries every finding.</exception>
    public ConeReading Reading(string temperature, string? rate = null, string? chart = null)
    {
        var findings = new List<Finding>();
        if (!Temperature.TryParse(temperature, out var read, out var wrong)) findings.Add(wrong! with { Field = "temperature" });
        var question = ConeQuestion.Read(charts, rate, chart, "rate", "chart", findings);
        return findings.Count == 0 ? readings.Answer(read, question!) : throw new RefusedException(findings);
    }

    /// <summary>The charts.</summary>
    public ChartList Charts() => describer.List();

    /// <summary>A chart with every cell.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public ChartDetail Chart(string id) => charts.TryFind(id, "chart", out var found, out var finding)
        ? describer.Detail(found)
        : throw new RefusedException(finding! with { Code = FindingCodes.NotFound });

    /// <summary>How cones behave.</summary>
    /// <param name="topic">Only facts of a topic; null: all.</param>
    /// <exception cref="RefusedException">There is no such topic.</exception>
    public ConeFactList Facts(string? topic = null) => ConeFacts.Of(charts.Dataset, topic);

    /// <summary>Answers a batch of conversions, each line by itself.</summary>
    /// <param name="request">The lines.</param>
    /// <param name="rows">Of a CSV the line of the file that each line stands in, by which problems name it; null for JSON, whose
    /// problems are named by JSON pointers.</param>
    /// <exception cref="RefusedException">The request as a whole can't be answered.</exception>
    public ConversionAnswer Convert(ConversionRequest request, IReadOnlyList<long>? rows = null)
    {
        var together = new Together();
        together.Try(() => ConversionCheck.Require(request));
        if (together.Any && request.Lines is { Count: > 0 and <= ConversionCheck.MostLines })
        {
            // Without a unit that can be read, what has none of its own can't be judged, and lacks nothing of its own either.
            var each = converter.Convert(request with { Units = RequestCheck.Meant(request.Units) }, rows);
            foreach (var problem in each.Lines.SelectMany(l => l.Problems).Where(p => !OfUnits.Contains(p.Code)))
                together.Findings.Add(problem);
        }

        together.Done();
        return converter.Convert(request, rows);
    }
}
