using System.Collections.Concurrent;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork.Logs;

namespace ConeService.Firing.HeatWork;

/// <summary>An answer with the history it was read from, for figures.</summary>
/// <param name="Answer">The answer.</param>
/// <param name="History">The firing.</param>
internal sealed record HeatWorkResult(HeatWorkAnswer Answer, HeatHistory History);

/// <summary>A firing as it was read; what of it is null was not sent or is wrong.</summary>
/// <param name="Settings">Chart, thermocouple and uncertainty.</param>
/// <param name="Log">Its log.</param>
/// <param name="Programme">Its programme.</param>
/// <param name="Fahrenheit">True when it was sent in °F.</param>
internal sealed record ReadFiring(HeatSettings? Settings, CleanLog? Log, HeatProgramme? Programme, bool Fahrenheit);

/// <summary>
/// Answers: what does, or did, this firing do to the cones of a chart? May be shared by requests; keeps the tables of the
/// charts it was asked for.
/// </summary>
/// <param name="charts">The charts.</param>
internal sealed class HeatWorkCalculator(ConeCharts charts)
{
    private const double Zero = Temperature.KelvinAtZero;
    private const double QuartzCelsius = 573;
    private const double QuartzWidth = 50;

    private readonly ConcurrentDictionary<(string Chart, decimal Rate), ConeCurves> curves = new();

    /// <summary>The charts.</summary>
    public ConeCharts Charts { get; } = charts;

    /// <summary>What is taken for parameters left out.</summary>
    public HeatWorkDefaults Defaults { get; } = new(charts.Dataset);

    /// <summary>Answers a request with a programme or a log.</summary>
    /// <param name="request">The request; units are C or F, and it has either segments or a log.</param>
    /// <param name="at">JSON pointer to the request, empty at the root.</param>
    /// <exception cref="RefusedException">The firing can't be followed; carries every finding.</exception>
    public HeatWorkResult Answer(HeatWorkRequest request, string at = "")
    {
        var together = new Together();
        var read = Read(request, at, together);
        together.Done();
        return Answer(read, at);
    }

    /// <summary>Answers a firing that was read, of which nothing was wrong.</summary>
    /// <param name="read">The firing.</param>
    /// <param name="at">JSON pointer to its request.</param>
    public HeatWorkResult Answer(ReadFiring read, string at) => InBody(
        read.Log is { } log
            ? Answer(log, read.Settings!, read.Fahrenheit)
            : Answer(read.Programme!.ToHistory(), null, [], read.Settings!),
        at);

    /// <summary>Reads a firing; what is wrong with any part of it hides nothing of the others.</summary>
    /// <param name="request">The request, whatever is wrong with it.</param>
    /// <param name="at">JSON pointer to it.</param>
    /// <param name="together">Where findings go.</param>
    /// <param name="free">A member of the hottest segment that is asked for, as of <see cref="ProgrammeReader"/>.</param>
    public ReadFiring Read(HeatWorkRequest request, string at, Together together, string? free = null)
    {
        var settings = HeatSettings.Read(Charts, request, at, together.Findings);
        var judged = request.Units is "C" or "F" ? request : request with { Units = RequestCheck.Judged(request.Units) };
        return new(
            settings,
            request.Log is null ? null : together.Try(() => LogSamples.Read(judged, at)),
            request.Segments is not { Count: > 0 and <= HeatWorkCheck.MostSegments }
                ? null
                : together.Try(() => ProgrammeReader.Read(judged, at, Defaults, settings?.Assumed ?? [], free)),
            request.Units == "F");
    }

    /// <summary>Answers a log that was read elsewhere.</summary>
    /// <param name="log">The log.</param>
    /// <param name="settings">Chart, thermocouple, uncertainty.</param>
    /// <param name="fahrenheit">True when it was in °F: a peak that would suit °C better is pointed out.</param>
    public HeatWorkResult Answer(CleanLog log, HeatSettings settings, bool fahrenheit)
    {
        if (log.Zones.Count > 0) return ZoneAnswers.Answer(this, log, settings, fahrenheit);
        var warnings = log.Warnings.ToList();
        ThermocoupleSurvival.Warn(Charts.Dataset, settings.Tolerance, log.History, warnings);
        var sent = ((log.History.Peak.Kelvin - Zero) * 1.8) + 32;
        if (fahrenheit && sent is >= 586 and <= 1450 && log.History.Peak.Kelvin - Zero < 586)
        {
            warnings.Add(HeatWarning.Of(WarningCodes.UnitsLookWrong, Message.Of("heat-work.units-look-wrong", ("fahrenheit", sent))));
        }

        return Answer(log.History, new(log.Samples, log.Used, null, null, []), warnings, settings);
    }

    /// <summary>Chart, thermocouple and uncertainty of a request.</summary>
    /// <exception cref="RefusedException">One of them is wrong.</exception>
    public HeatSettings Settings(HeatWorkRequest request, string at)
    {
        var findings = new List<Finding>();
        return HeatSettings.Read(Charts, request, at, findings) ?? throw new RefusedException(findings);
    }

    /// <summary>The curves of a chart for a firing whose last 100 °C went at a rate.</summary>
    public ConeCurves Curves(ConeChart chart, double? rate)
    {
        // Borrowed curves go through the printed value nearest to the rate: one set for each printed rate.
        var nearest = chart.NearestRate(Usable(chart, rate));
        return curves.GetOrAdd((chart.Id, nearest), static (_, x) => new(x.chart, x.nearest), (chart, nearest));
    }

    /// <summary>A rate at which a chart can be asked, near one that may be unknown or beyond its limits.</summary>
    internal static HeatingRate RateOn(ConeChart chart, double? rate) => new(Usable(chart, rate));

    internal HeatWorkResult Answer(HeatHistory history, LogSummary? log, List<HeatWarning> warnings, HeatSettings settings)
    {
        var rate = HistoryShape.RateOverLast100(history);
        var chartCurves = Curves(settings.Chart, rate);
        var work = chartCurves.Measure(history);
        var peak = history.Peak.Kelvin - Zero;
        var assumed = settings.Assumed.ToList();
        var shared = Shared(settings, peak, assumed);
        var histogram = history.Residence;
        var slopes = HeatUncertainty.OfSlopes(chartCurves, work, histogram, Defaults["energy-log-sigma"]);
        var at = new HeatingRate(Usable(settings.Chart, rate));
        var results = work.Cones
            .Select((cone, i) => Result(cone, history.Start.Hours, at, cone.SigmaOf(shared, at, slopes[i], histogram))).ToList();
        if (assumed.FirstOrDefault(a => a.Field == "fullSpeedRate") is { } full)
        {
            warnings.Add(HeatWarning.Of(WarningCodes.FullSpeedAssumed, Message.Of("heat-work.full-speed-assumed", ("rate", full.Value))));
        }

        HeatWorkWarnings.Add(warnings, settings, work, rate, peak);
        var deciding = new[] { work.Reached, work.Next }.OfType<ConeWork>().ToList();
        var values = deciding.Select(d => d.Cone.Computed(at)).OfType<EndPointValue>().ToList();
        var tolerance = settings.Tolerance;
        return new(new(
            Charts.Dataset.VersionId,
            Chart: settings.Chart.Id,
            Reached: work.Reached?.Cone.Cone.ToString(),
            Next: work.Next?.Cone.Cone.ToString(),
            Fraction: work.Fraction is { } f ? ReadingCalculator.Shown(f) : null,
            Reading: Reading(work),
            PeakCelsius: Math.Round(peak, 3),
            PeakFahrenheit: Math.Round((peak * 1.8) + 32, 3),
            PeakAtMinutes: Minutes(history.Peak.Hours - history.Start.Hours),
            DurationMinutes: Minutes(history.DurationHours),
            Above1000CelsiusMinutes: Minutes(HistoryShape.HoursAbove(history, 1000 + Zero)),
            RateOverLast100CelsiusPerHour: rate is { } r ? Math.Round(r, 2) : null,
            CoolingThrough573CelsiusPerHour:
                HistoryShape.CoolingThrough(history, QuartzCelsius + Zero, QuartzWidth) is { } c ? Math.Round(c, 2) : null,
            Cones: results,
            OutOfOrder: [.. work.OutOfOrder.Select(c => c.Cone.Cone.ToString())],
            LeftOut: [.. work.LeftOut.Select(c => c.ToString())],
            Thermocouple: new(
                tolerance.Type, tolerance.Standard, tolerance.Class, settings.Firings,
                Math.Round(ThermocoupleTolerance.At(tolerance, peak), 3)),
            Uncertainty: shared,
            Log: log,
            // Bases are ordered from the strongest to the weakest.
            Basis: values.Max(v => v.Basis),
            Confidence: ConfidenceOrder.Weakest(values.Select(v => v.Confidence)),
            ComputedFrom: [.. values.SelectMany(v => v.Cells).Distinct().Select(PrintedCells.Point)],
            BorrowedFrom: Charts.BorrowedBy(values),
            Warnings: warnings,
            Notes: HeatWorkWarnings.Notes,
            Sources:
            [
                .. values.SelectMany(v => v.Cells).Select(cell => cell.Source)
                    .Append(tolerance.Source).Append(ConeCharts.DerivedSource).Distinct(),
            ],
            Assumed: assumed), history);
    }

    private static HeatWorkResult InBody(HeatWorkResult result, string at) =>
        result with { Answer = result.Answer with { Assumed = [.. result.Answer.Assumed.Select(a => a.InBody(at))] } };

    private static ConeResult Result(ConeWork cone, double start, HeatingRate rate, double sigma)
    {
        var bend = cone.BendDegrees;
        return new(
            cone.Cone.Cone.ToString(), Math.Round(ConeWork.Told(cone.Progress), 6),
            Math.Round(bend, 2), Math.Round(ConeBend.Clock(bend), 2),
            Math.Round(cone.MarginKelvin, 4), Math.Round(cone.MarginKelvin * 1.8, 4),
            cone.DownAtHours is { } down ? Minutes(down - start) : null,
            Math.Round(HeatUncertainty.Probability(cone.MarginKelvin, sigma), 4), Math.Round(sigma, 2),
            // A history is never a printed value, even where its last rate is a printed one.
            cone.Cone.Computed(rate)?.Basis ?? Basis.Interpolated);
    }

    private SharedUncertainty Shared(HeatSettings settings, double peak, List<Assumption> assumed)
    {
        var stated = settings.Uncertainty;
        var noble = settings.Tolerance.Type is "R" or "S" or "B";
        var drift = stated.DriftCelsiusDifference
            ?? Math.Min(Defaults["drift-cap"], settings.Firings * Defaults[noble ? "drift-noble-metal" : "drift-base-metal"]);
        return new(
            Math.Round(ThermocoupleTolerance.At(settings.Tolerance, peak) / Math.Sqrt(3), 4), Math.Round(drift, 4),
            Defaults.Take(stated.ConeCelsiusDifference, "cone-sigma", "uncertainty.coneCelsiusDifference", assumed),
            Defaults.Take(stated.GradientCelsiusDifference, "gradient-sigma", "uncertainty.gradientCelsiusDifference", assumed));
    }

    private static Message Reading(ScaleWork work) => work.Reached is { } reached
        ? ReadingCalculator.Say(reached.Cone.Cone, work.Next?.Cone.Cone, work.Fraction)
        : Message.Of("heat-work.reading-none", ("cone", work.Next!.Cone.Cone.ToString()));

    private static decimal Usable(ConeChart chart, double? rate) => rate is { } r
        ? (decimal)Math.Round(Math.Clamp(r, (double)HeatingRate.Slowest, (double)HeatingRate.Fastest), 4)
        : chart.DefaultRate!.Value.CelsiusPerHour;

    private static double Minutes(double hours) => Math.Round(hours * 60, 3);
}
