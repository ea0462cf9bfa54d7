using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Requests;
using ConeService.Contract.Texts;
using ConeService.Firing.HeatWork.Logs;

namespace ConeService.Firing.HeatWork;

/// <summary>Turns the programme of a request into one that can be followed. For one request only.</summary>
internal sealed class ProgrammeReader
{
    private const double Zero = Temperature.KelvinAtZero;
    private const double FastestPerHour = HeatWorkLimits.FastestCelsius;
    private const double LongestHoldMinutes = HeatWorkLimits.LongestMinutes;
    private const int MostFindings = 20;

    private static readonly Message Rates = Message.Of("heat-work.rates-allowed");

    private readonly HeatWorkRequest request;
    private readonly string at;
    private readonly HeatWorkDefaults defaults;
    private readonly List<Assumption> assumed;
    private readonly List<Finding> findings = [];
    private readonly bool fahrenheit;

    private ProgrammeReader(HeatWorkRequest request, string at, HeatWorkDefaults defaults, List<Assumption> assumed)
    {
        (this.request, this.at, this.defaults, this.assumed) = (request, at, defaults, assumed);
        fahrenheit = request.Units == "F";
    }

    /// <summary>Reads a programme.</summary>
    /// <param name="request">The request; its units are C or F.</param>
    /// <param name="at">JSON pointer to the request.</param>
    /// <param name="defaults">What is taken for what is left out.</param>
    /// <param name="assumed">Assumptions are added here.</param>
    /// <param name="free">A member of the hottest segment that is asked for, and so may be absent: peak, hold, rate or null.</param>
    /// <exception cref="RefusedException">The programme can't be followed; carries every finding.</exception>
    public static HeatProgramme Read(
        HeatWorkRequest request, string at, HeatWorkDefaults defaults, List<Assumption> assumed, string? free = null) =>
        new ProgrammeReader(request, at, defaults, assumed).Read(free);

    private HeatProgramme Read(string? free)
    {
        var start = Kelvin(request.Start, at + "/start") ?? defaults.Take(null, "room", "start", assumed) + Zero;
        var (segments, fullSpeed) = Segments(start, free);
        var last = segments.Count > 0 ? segments[^1].TargetKelvin : start;
        var limit = KelvinPerHour(request.FullSpeedRate, at + "/fullSpeedRate")
            ?? (fullSpeed ? defaults.Take(null, "full-speed-rate", "fullSpeedRate", assumed) : defaults["full-speed-rate"]);
        var cooling = Cooling(last, start);
        if (findings.Count > 0) throw new RefusedException(findings);
        var programme = new HeatProgramme(start, segments, limit, cooling);
        return programme.DoesSomething || free is not null ? programme : throw new RefusedException(new Finding(
            FindingCodes.ProgrammeDoesNothing, at + "/segments", null, Message.Of("heat-work.programme-does-nothing"),
            [Message.Of("heat-work.other-target-allowed"), Message.Of("heat-work.some-hold-allowed")]));
    }

    private (List<HeatSegment> Segments, bool AnyAtFullSpeed) Segments(double start, string? free)
    {
        var segments = new List<HeatSegment>();
        var (from, fullSpeed) = (start, false);
        for (var i = 0; i < request.Segments!.Count && findings.Count < MostFindings; i++)
        {
            Patience.Check();
            var (sent, last) = (request.Segments[i] ?? new(), i == request.Segments.Count - 1);
            var segment = Segment(sent, from, $"{at}/segments/{i}", mayBeOpen: free == "peak" && last);
            fullSpeed |= sent.Rate is null && segment.TargetKelvin != from && !(free == "rate" && last);
            segments.Add(segment);
            from = segment.TargetKelvin;
        }

        return (segments, fullSpeed);
    }

    private HeatSegment Segment(ProgrammeSegment sent, double from, string field, bool mayBeOpen)
    {
        if (sent.Target is null && !mayBeOpen)
        {
            findings.Add(new(
                FindingCodes.SegmentWithoutTarget, field + "/target", null,
                sent.HoldMinutes is null ? Message.Of("heat-work.segment-without-target") : Message.Of("heat-work.hold-without-target"),
                [Message.Of("heat-work.target-allowed")]));
        }

        var target = Kelvin(sent.Target, field + "/target") ?? from;
        var rate = KelvinPerHour(sent.Rate, field + "/rate", sent.Rate == 0 ? Message.Of("heat-work.hold-is-no-rate") : null);
        if (sent.Rate < 0 && target > from)
        {
            findings.Add(HeatSettings.OutOfRange(
                field + "/rate", sent.Rate.Value, Message.Of("heat-work.climb-allowed"), Message.Of("heat-work.rate-of-cooling")));
        }

        if (sent.HoldMinutes is { } hold && hold is not (>= 0 and <= LongestHoldMinutes))
        {
            findings.Add(HeatSettings.OutOfRange(field + "/holdMinutes", hold, Message.Of("heat-work.holds-allowed")));
        }

        return new(rate, target, (sent.HoldMinutes ?? 0) / 60);
    }

    private CoolDown? Cooling(double from, double start)
    {
        if (request.NaturalCooling is not { } natural)
        {
            var mistake = request.CoolingRate == 0 ? Message.Of("heat-work.leave-cooling-out") : null;
            return KelvinPerHour(request.CoolingRate, at + "/coolingRate", mistake) is { } steady
                ? new CoolDown.AtRate(steady, Math.Min(start, from))
                : null;
        }

        var field = at + "/naturalCooling";
        if (request.CoolingRate is not null || natural.TimeConstantMinutes is not null == natural.FirstRate is not null)
        {
            findings.Add(new(
                FindingCodes.CoolingAmbiguous, field, null, Message.Of("heat-work.cooling-ambiguous"),
                Message.Verbatim(["{\"timeConstantMinutes\": 300}", "{\"firstRate\": 250}"])));
            return null;
        }

        if (natural.TimeConstantMinutes is { } tau && !Bounds.Of<NaturalCooling>(nameof(NaturalCooling.TimeConstantMinutes)).Contain(tau))
        {
            findings.Add(HeatSettings.OutOfRange(field + "/timeConstantMinutes", tau, Message.Of("heat-work.time-constants-allowed")));
        }

        var room = Kelvin(natural.Room, field + "/room") ?? defaults.Take(null, "room", "naturalCooling.room", assumed) + Zero;
        var first = KelvinPerHour(natural.FirstRate, field + "/firstRate");
        if (findings.Count > 0 || from <= room) return null;
        return first is { } rate
            ? CoolDown.Natural.StartingAt(rate, from, room)
            : new CoolDown.Natural(natural.TimeConstantMinutes!.Value / 60, room);
    }

    private double? Kelvin(double? sent, string field)
    {
        if (sent is not { } value) return null;
        var celsius = fahrenheit ? (value - 32) / 1.8 : value;
        if (celsius is not (>= LogSamples.ColdestCelsius and <= LogSamples.HottestCelsius)) findings.Add(Unbelievable(value, field));
        return celsius + Zero;
    }

    private double? KelvinPerHour(double? sent, string field, Message? mistake = null)
    {
        if (sent is not { } value) return null;
        var rate = fahrenheit ? Math.Abs(value) / 1.8 : Math.Abs(value);
        if (!(Math.Abs(value) > 0 && rate <= FastestPerHour)) findings.Add(HeatSettings.OutOfRange(field, value, Rates, mistake));
        else if (rate < HeatWorkLimits.SlowestCelsius) findings.Add(Imperceptible(value, field));
        return rate;
    }

    private static Finding Imperceptible(double sent, string field)
    {
        var text = sent.ToString(CultureInfo.InvariantCulture);
        var mistake = field.EndsWith("/rate", StringComparison.Ordinal) ? Message.Of("heat-work.hold-is-no-rate") : null;
        return new(
            FindingCodes.RateImperceptible, field, text, Message.Of("heat-work.rate-imperceptible", ("rate", text)), [Rates], mistake);
    }

    private Finding Unbelievable(double sent, string field)
    {
        var asCelsius = (sent - 32) / 1.8;
        return !fahrenheit && sent > LogSamples.HottestCelsius && asCelsius <= LogSamples.HottestCelsius
            ? new(
                FindingCodes.UnitsSuspect, field, FormattableString.Invariant($"{sent:0.##}"),
                Message.Of("heat-work.hotter-than-kilns", ("celsius", sent)),
                [LogSamples.Range(fahrenheit: false)], Message.Of("heat-work.looks-fahrenheit", ("number", sent), ("celsius", asCelsius)))
            : HeatSettings.OutOfRange(field, sent, LogSamples.Range(fahrenheit));
    }
}
