using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Cones;

/// <summary>Reads which chart a caller asks of; where none is named, the current one is taken and said so.</summary>
internal static class ChartInput
{
    /// <summary>Reads a chart.</summary>
    /// <param name="charts">The charts.</param>
    /// <param name="sent">The name as sent; null or blank when left out.</param>
    /// <param name="field">The parameter or JSON pointer, for the finding.</param>
    /// <param name="assumed">The assumption is added here.</param>
    /// <param name="findings">What is wrong is added here.</param>
    /// <returns>The chart, or null when there is none of that name.</returns>
    public static ConeChart? Read(
        ConeCharts charts, string? sent, string field, ICollection<Assumption> assumed, ICollection<Finding> findings)
    {
        if (string.IsNullOrWhiteSpace(sent))
        {
            assumed.Add(new("chart", ConeCharts.DefaultChart, Message.Of("cones.chart-assumed")));
            return charts.Default;
        }

        if (charts.TryFind(sent.Trim(), field, out var chart, out var unknown)) return chart;
        findings.Add(unknown!);
        return null;
    }

    /// <summary>Reads a chart on which a firing can be followed: one that states heating rates, and has curves.</summary>
    /// <param name="charts">The charts.</param>
    /// <param name="sent">The name as sent; null or blank when left out.</param>
    /// <param name="field">The parameter or JSON pointer, for the finding.</param>
    /// <param name="instead">Names the chart to use, for the finding.</param>
    /// <param name="assumed">The assumption is added here.</param>
    /// <param name="findings">What is wrong is added here.</param>
    /// <returns>The chart, or null when something was wrong.</returns>
    public static ConeChart? ReadFollowable(
        ConeCharts charts, string? sent, string field, Message instead, ICollection<Assumption> assumed, ICollection<Finding> findings)
    {
        if (Read(charts, sent, field, assumed, findings) is not { } chart) return null;
        if (chart.DefaultRate is { } rate && chart.Cones.Any(c => c.Curve(rate) is not null)) return chart;
        findings.Add(new(
            FindingCodes.ChartWithoutKinetics, field, sent, Message.Of("cones.chart-without-kinetics", ("chart", chart.Id)),
            Message.Verbatim(charts.Charts.Where(c => c.Rates.Count > 0).Select(c => c.Id)), instead));
        return null;
    }
}
