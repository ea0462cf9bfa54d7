using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;

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
        var chart = ChartInput.Read(charts, chartText, chartField, assumed, findings);
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
            assumed.Add(new(
                "rate", standard.ToString(), chart.Rates.Count == 1 ? Message.Of("cones.only-rate") : Message.Of("cones.usual-rate")));
        }

        return chart is null || findings.Count > before ? null : new(chart, rate, assumed);
    }

    /// <summary>The finding for a rate asked of values that are printed without one.</summary>
    public static Finding NotApplicable(ConeChart chart, string? rateText, string rateField) => new(
        FindingCodes.RateNotApplicable, rateField, rateText,
        Message.Of("cones.no-rate-here", ("chart", chart.Id), ("rate", rateText)),
        [Message.Of("cones.leave-rate-out"), .. Message.Verbatim(chart.Rates.Select(r => $"{r}C/h"))],
        Message.Of("cones.chart-for-end-points", ("chart", ConeCharts.DefaultChart)));
}
