using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Requests;
using ConeService.Contract.Texts;
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
internal sealed record HeatSettings(
    ConeChart Chart, ThermocoupleToleranceRow Tolerance, double Firings,
    UncertaintyInput Uncertainty, bool Reduction, List<Assumption> Assumed)
{
    private const string UsualType = "K";
    private const string UsualStandard = "iec-60584";
    private const string UsualClass = "2";
    private const string StandardOfWords = "astm-e230";
    private const string UsualWord = "standard";
    private static readonly string[] Atmospheres = ["oxidation", "neutral", "reduction"];

    /// <summary>What is missing from a package for what is assumed of a thermocouple; nothing of a package without the table.</summary>
    public static IEnumerable<PackageFault> Requires(Dataset dataset)
    {
        if (dataset.ThermocoupleTolerances.Count == 0) yield break;
        foreach (var (standard, kind) in new[] { (UsualStandard, UsualClass), (StandardOfWords, UsualWord) })
        {
            if (Find(dataset, UsualType, standard, kind) is not null) continue;
            yield return Requirements.Fault(
                dataset, "thermocouple-tolerances", "class", $"has no row of type {UsualType}, {standard}, class {kind}, which is assumed");
        }
    }

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
        var instead = Message.Of("cones.chart-for-heat-work", ("chart", ConeCharts.DefaultChart));
        var chart = ChartInput.ReadFollowable(charts, request.Chart, at + "/chart", instead, assumed, findings);
        var tolerance = ReadThermocouple(charts.Dataset, request.Thermocouple, at + "/thermocouple", assumed, findings);
        var firings = request.Thermocouple?.Firings;
        if (firings is { } seen && !Bounds.Of<ThermocoupleInput>(nameof(ThermocoupleInput.Firings)).Contain(seen))
        {
            findings.Add(OutOfRange(at + "/thermocouple/firings", seen, Message.Of("heat-work.firings-allowed")));
        }

        if (firings is null && request.Uncertainty?.DriftCelsiusDifference is null)
        {
            assumed.Add(new("thermocouple.firings", "0", Message.Of("heat-work.new-thermocouple")));
        }

        var stated = request.Uncertainty ?? new();
        foreach (var (value, name) in new[]
            {
                (stated.ConeCelsiusDifference, "coneCelsiusDifference"),
                (stated.GradientCelsiusDifference, "gradientCelsiusDifference"),
                (stated.DriftCelsiusDifference, "driftCelsiusDifference"),
            })
        {
            if (value is { } v && !Bounds.Of<UncertaintyInput>(nameof(UncertaintyInput.ConeCelsiusDifference)).Contain(v))
            {
                findings.Add(OutOfRange($"{at}/uncertainty/{name}", v, Message.Of("answers.range", ("low", "0"), ("high", "200 °C"))));
            }
        }

        if (request.Atmosphere is { } atmosphere && !Atmospheres.Contains(atmosphere))
        {
            findings.Add(new(
                FindingCodes.AtmosphereUnknown, at + "/atmosphere", atmosphere,
                Message.Of("heat-work.atmosphere-unknown", ("atmosphere", atmosphere)),
                Message.Verbatim(Atmospheres), NearMatches.Probably(atmosphere, Atmospheres)));
        }

        return findings.Count > before ? null : new(chart!, tolerance!, firings ?? 0, stated, request.Atmosphere == "reduction", assumed);
    }

    /// <summary>A number outside what is believed.</summary>
    internal static Finding OutOfRange(string field, double value, Message range, Message? mistake = null)
    {
        var text = value.ToString("0.######", CultureInfo.InvariantCulture);
        return new(
            FindingCodes.NumberOutOfRange, field, text, Message.Of("answers.number-out-of-range", ("value", text)), [range], mistake);
    }

    private static ThermocoupleToleranceRow? Find(Dataset dataset, string type, string standard, string kind) =>
        dataset.ThermocoupleTolerances.FirstOrDefault(r => r.Type == type && r.Standard == standard && r.Class == kind);

    private static ThermocoupleToleranceRow? ReadThermocouple(
        Dataset dataset, ThermocoupleInput? sent, string field, List<Assumption> assumed, ICollection<Finding> findings)
    {
        var (type, standard) = (sent?.Type?.Trim().ToUpperInvariant(), sent?.Standard?.Trim().ToLowerInvariant());
        var kind = sent?.Class.Text?.Trim().ToLowerInvariant();
        if (type is null) assumed.Add(new("thermocouple.type", type = UsualType, Message.Of("heat-work.usual-type")));
        if (standard is null)
        {
            standard = kind is "standard" or "special" ? StandardOfWords : UsualStandard;
            assumed.Add(new(
                "thermocouple.standard", standard,
                kind is null ? Message.Of("heat-work.international-standard") : Message.Of("heat-work.standard-of-class")));
        }

        if (kind is null)
        {
            kind = standard == StandardOfWords ? UsualWord : UsualClass;
            assumed.Add(new("thermocouple.class", kind, Message.Of("heat-work.common-grade")));
        }

        var row = Find(dataset, type, standard, kind);
        if (row is null)
        {
            findings.Add(new(
                FindingCodes.ThermocoupleUnknown, field, $"{type}, {standard}, {kind}",
                Message.Of("heat-work.thermocouple-unknown", ("type", type), ("standard", standard), ("class", kind)),
                Message.Verbatim(dataset.ThermocoupleTolerances.Select(r => $"{r.Type}, {r.Standard}, {r.Class}"))));
        }

        return row;
    }
}
