using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>Chart, thermocouple and uncertainty of a heat-work question, with what was assumed to get there.</summary>
/// <param name="Chart">The chart.</param>
/// <param name="Tolerance">The thermocouple's tolerance.</param>
/// <param name="Firings">Firings it has seen.</param>
/// <param name="Uncertainty">Parts of the uncertainty that were stated.</param>
/// <param name="Reduction">True when the firing was in reduction.</param>
/// <param name="Assumed">Parameters that were left out.</param>
internal sealed record HeatSettings(ConeChart Chart, ThermocoupleToleranceRow Tolerance, double Firings, UncertaintyInput Uncertainty, bool Reduction, List<Assumption> Assumed)
{
    private const string UsualType = "K";
    private const string UsualStandard = "iec-60584";
    private static readonly string[] Atmospheres = ["oxidation", "neutral", "reduction"];

    /// <summary>Reads the settings of a request.</summary>
    /// <param name="charts">The charts.</param>
    /// <param name="request">The request.</param>
    /// <param name="at">JSON pointer to the request, empty at the root.</param>
    /// <param name="findings">Everything wrong is added here.</param>
    /// <returns>The settings, or null when something was wrong.</returns>
    public static HeatSettings? Read(ConeCharts charts, HeatWorkRequest request, string at, ICollection<Finding> findings)
    {
        var before = findings.Count;
        var assumed = new List<Assumption>();
        var chart = ReadChart(charts, request.Chart, at + "/chart", assumed, findings);
        var tolerance = ReadThermocouple(charts.Dataset, request.Thermocouple, at + "/thermocouple", assumed, findings);
        var firings = request.Thermocouple?.Firings;
        if (firings is not null and (< 0 or > 10_000)) findings.Add(OutOfRange(at + "/thermocouple/firings", firings.Value, "0 to 10,000 firings"));
        if (firings is null && request.Uncertainty?.DriftCelsius is null) assumed.Add(new("thermocouple.firings", "0", "A new thermocouple; say how many firings above 1100 °C it has seen."));
        var stated = request.Uncertainty ?? new();
        foreach (var (value, name) in new[] { (stated.ConeCelsius, "coneCelsius"), (stated.GradientCelsius, "gradientCelsius"), (stated.DriftCelsius, "driftCelsius") })
        {
            if (value is { } v && v is not (>= 0 and <= 200)) findings.Add(OutOfRange($"{at}/uncertainty/{name}", v, "0 to 200 °C"));
        }

        if (request.Atmosphere is { } atmosphere && !Atmospheres.Contains(atmosphere))
        {
            findings.Add(new("atmosphere-unknown", at + "/atmosphere", atmosphere, $"“{atmosphere}” is not an atmosphere.", [.. Atmospheres], NearMatches.Find(atmosphere, Atmospheres) is [var near, ..] ? $"Probably {near}." : null));
        }

        return findings.Count > before ? null : new(chart!, tolerance!, firings ?? 0, stated, request.Atmosphere == "reduction", assumed);
    }

    /// <summary>A number outside what is believed.</summary>
    internal static Finding OutOfRange(string field, double value, string range, string? mistake = null) => new(
        "number-out-of-range", field, value.ToString("0.######", System.Globalization.CultureInfo.InvariantCulture), $"{value:0.######} is outside what can be computed with.", [range], mistake);

    private static ConeChart? ReadChart(ConeCharts charts, string? name, string field, List<Assumption> assumed, ICollection<Finding> findings)
    {
        if (string.IsNullOrWhiteSpace(name))
        {
            assumed.Add(new("chart", ConeCharts.DefaultChart, "No chart was named; the current chart of self-supporting cones is taken."));
            return charts.Default;
        }

        if (!charts.TryFind(name.Trim(), field, out var chart, out var unknown))
        {
            findings.Add(unknown!);
            return null;
        }

        if (chart.DefaultRate is not { } rate || chart.Cones.All(c => c.Curve(rate) is null))
        {
            findings.Add(new("chart-without-kinetics", field, name, $"Chart {chart.Id} gives no way to follow a firing: it states no heating rate.",
                [.. charts.Charts.Where(c => c.Rates.Count > 0).Select(c => c.Id)], $"For heat work use {ConeCharts.DefaultChart}."));
        }

        return chart;
    }

    private static ThermocoupleToleranceRow? ReadThermocouple(Dataset dataset, ThermocoupleInput? sent, string field, List<Assumption> assumed, ICollection<Finding> findings)
    {
        var (type, standard, kind) = (sent?.Type?.Trim().ToUpperInvariant(), sent?.Standard?.Trim().ToLowerInvariant(), sent?.Class.Text?.Trim().ToLowerInvariant());
        if (type is null) assumed.Add(new("thermocouple.type", type = UsualType, "The usual one in studio kilns."));
        if (standard is null)
        {
            standard = kind is "standard" or "special" ? "astm-e230" : UsualStandard;
            assumed.Add(new("thermocouple.standard", standard, kind is null ? "The international standard." : "The standard that has such a class."));
        }

        if (kind is null) assumed.Add(new("thermocouple.class", kind = standard == "astm-e230" ? "standard" : "2", "The common grade."));
        var row = dataset.ThermocoupleTolerances.FirstOrDefault(r => r.Type == type && r.Standard == standard && r.Class == kind);
        if (row is null)
        {
            findings.Add(new("thermocouple-unknown", field, $"{type}, {standard}, {kind}", $"No tolerance is known for type {type}, {standard}, class {kind}.",
                [.. dataset.ThermocoupleTolerances.Select(r => $"{r.Type}, {r.Standard}, {r.Class}")]));
        }

        return row;
    }
}
