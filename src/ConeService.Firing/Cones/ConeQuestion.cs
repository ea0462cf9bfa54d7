using ConeService.Contract.Answers;
using ConeService.Contract.Quantities;

namespace ConeService.Firing.Cones;

/// <summary>The chart and rate of a question, with everything that was assumed to get there.</summary>
/// <param name="Chart">The chart.</param>
/// <param name="Rate">The rate; null where the chart states none.</param>
/// <param name="Assumed">Parameters that were left out.</param>
internal sealed record ConeQuestion(ConeChart Chart, HeatingRate? Rate, IReadOnlyList<Assumption> Assumed)
{
    /// <summary>Reads chart and rate from text; what is left out is assumed and said so.</summary>
    /// <param name="charts">The charts.</param>
    /// <param name="rateText">The rate with its unit; null or blank when left out.</param>
    /// <param name="chartText">The chart; null or blank when left out.</param>
    /// <param name="rateField">Name of the rate parameter, for findings.</param>
    /// <param name="chartField">Name of the chart parameter, for findings.</param>
    /// <param name="findings">Everything wrong is added here.</param>
    /// <returns>The question, or null when something was wrong.</returns>
    public static ConeQuestion? Read(
        ConeCharts charts, string? rateText, string? chartText, string rateField, string chartField, ICollection<Finding> findings)
    {
        var before = findings.Count;
        var assumed = new List<Assumption>();
        ConeChart? chart = charts.Default;
        if (string.IsNullOrWhiteSpace(chartText))
        {
            assumed.Add(new("chart", ConeCharts.DefaultChart, "No chart was named; the current chart of self-supporting cones is taken."));
        }
        else if (!charts.TryFind(chartText.Trim(), chartField, out chart, out var unknown))
        {
            findings.Add(unknown!);
            chart = null;
        }

        HeatingRate? rate = null;
        if (!string.IsNullOrWhiteSpace(rateText))
        {
            if (HeatingRate.TryParse(rateText, out var read, out var wrong)) rate = read;
            else findings.Add(wrong! with { Field = rateField });
            if (chart is not null && chart.Rates.Count == 0) findings.Add(NotApplicable(chart, rateText, rateField));
        }
        else if (chart?.DefaultRate is { } standard)
        {
            rate = standard;
            assumed.Add(new("rate", standard.ToString(), chart.Rates.Count == 1
                ? "No rate was given; it is the only one this chart prints."
                : "No rate was given; it is the chart's usual one. Give the rate of the last 100 °C of your firing."));
        }

        return chart is null || findings.Count > before ? null : new(chart, rate, assumed);
    }

    /// <summary>The finding for a rate asked of values that are printed without one.</summary>
    public static Finding NotApplicable(ConeChart chart, string? rateText, string rateField) => new(
        "rate-not-applicable", rateField, rateText,
        $"Chart {chart.Id} states no heating rate for this, so nothing can be said for {rateText}.",
        ["leave the rate out", .. chart.Rates.Select(r => $"{r}C/h")],
        $"For an end point at a rate use chart {ConeCharts.DefaultChart}.");
}
