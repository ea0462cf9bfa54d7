using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Quantities;
using ConeService.Firing.HeatWork.Logs;

namespace ConeService.Firing.HeatWork;

/// <summary>Turns the programme or the log of a request into a history.</summary>
internal static class FiringInput
{
    private const double Zero = Temperature.KelvinAtZero;

    /// <summary>Reads a log of a JSON body.</summary>
    /// <exception cref="RefusedException">The log can't be used.</exception>
    public static CleanLog ReadLog(HeatWorkRequest request, string at)
    {
        var samples = new LogSamples(request.Units == "F", i => i < 0 ? at + "/log" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{at}/log/{i}"));
        for (var i = 0; i < request.Log!.Count && !samples.IsHopeless; i++)
        {
            if (request.Log[i] is { Minutes: { } minutes, Temperature: { } temperature }) samples.Add(i, minutes / 60, temperature);
            else samples.Refuse(new("log-value-unreadable", $"{at}/log/{i}", null, "The sample lacks its minutes or its temperature.", ["{\"minutes\": 90, \"temperature\": 1222.5}"]));
        }

        return samples.Clean();
    }

    /// <summary>Reads a programme.</summary>
    /// <param name="request">The request; its units are C or F.</param>
    /// <param name="at">JSON pointer to the request.</param>
    /// <param name="defaults">What is taken for what is left out.</param>
    /// <param name="assumed">Assumptions are added here.</param>
    /// <param name="free">A member of the hottest segment that is asked for, and so may be absent: peak, hold, rate or null.</param>
    /// <exception cref="RefusedException">The programme can't be followed; carries every finding.</exception>
    public static HeatProgramme ReadProgramme(HeatWorkRequest request, string at, HeatWorkDefaults defaults, List<Assumption> assumed, string? free = null)
    {
        var findings = new List<Finding>();
        var unit = request.Units == "F";
        double Rate(double r) => unit ? r / 1.8 : r;
        double Kelvin(double t) => (unit ? (t - 32) / 1.8 : t) + Zero;
        double? Temperature(double? sent, string field)
        {
            if (sent is { } t && !(Kelvin(t) - Zero is >= LogSamples.ColdestCelsius and <= LogSamples.HottestCelsius)) findings.Add(OutOfRange(t, unit, field));
            return sent is { } s ? Kelvin(s) : null;
        }

        double? Positive(double? sent, double most, string range, string field, string? mistake)
        {
            if (sent is { } r && !(Math.Abs(r) > 0 && Rate(Math.Abs(r)) <= most)) findings.Add(HeatSettings.OutOfRange(field, r, range, mistake));
            return sent is { } s ? Rate(Math.Abs(s)) : null;
        }

        const string rates = "above 0, up to 3,000 °C/h";
        var start = Temperature(request.Start, at + "/start") ?? defaults.Take(null, "room", "start", assumed) + Zero;
        var segments = new List<HeatSegment>();
        var (last, fullSpeed) = (start, false);
        for (var i = 0; i < request.Segments!.Count && findings.Count < 20; i++)
        {
            var (segment, field) = (request.Segments[i] ?? new(), $"{at}/segments/{i}");
            if (segment.Target is null && !(free == "peak" && i == request.Segments.Count - 1))
            {
                findings.Add(new("segment-without-target", field + "/target", null, segment.HoldMinutes is null ? "The segment has no target." : "The segment holds, but does not say at which temperature.", ["a temperature in units"]));
            }

            var target = Temperature(segment.Target, field + "/target") ?? last;
            var rate = Positive(segment.Rate, 3000, rates, field + "/rate", segment.Rate == 0 ? "A segment that does not move is a hold: give it the target where the one before ends, and holdMinutes." : null);
            if (segment.Rate < 0 && target > last) findings.Add(HeatSettings.OutOfRange(field + "/rate", segment.Rate.Value, "a rate above 0 to climb", "The target is hotter than where the segment starts, and the rate is that of a cooling."));
            if (segment.HoldMinutes is { } hold && hold is not (>= 0 and <= LogSamples.LongestHours * 60)) findings.Add(HeatSettings.OutOfRange(field + "/holdMinutes", hold, "0 to 120,000 minutes"));
            fullSpeed |= segment.Rate is null && target != last && !(free == "rate" && i == request.Segments.Count - 1);
            segments.Add(new(rate, target, (segment.HoldMinutes ?? 0) / 60));
            last = target;
        }

        var limit = Positive(request.FullSpeedRate, 3000, rates, at + "/fullSpeedRate", null) ?? (fullSpeed ? defaults.Take(null, "full-speed-rate", "fullSpeedRate", assumed) : defaults["full-speed-rate"]);
        var cooling = Cooling(request, at, last, start, defaults, assumed, Positive, Temperature, findings);
        if (findings.Count > 0) throw new RefusedException(findings);
        var programme = new HeatProgramme(start, segments, limit, cooling);
        return programme.DoesSomething || free is not null ? programme : throw new RefusedException(new Finding(
            "programme-does-nothing", at + "/segments", null, "The programme neither moves nor holds.", ["a target other than the start", "holdMinutes above 0"]));
    }

    private static CoolDown? Cooling(
        HeatWorkRequest request, string at, double from, double start, HeatWorkDefaults defaults, List<Assumption> assumed,
        Func<double?, double, string, string, string?, double?> rate, Func<double?, string, double?> temperature, List<Finding> findings)
    {
        const string range = "above 0, up to 3,000 °C/h";
        if (request.NaturalCooling is not { } natural)
        {
            return rate(request.CoolingRate, 3000, range, at + "/coolingRate", request.CoolingRate == 0 ? "Leave coolingRate out to end with the last segment." : null) is { } steady
                ? new CoolDown.AtRate(steady, Math.Min(start, from)) : null;
        }

        var field = at + "/naturalCooling";
        if (request.CoolingRate is not null || natural.TimeConstantHours is not null == natural.FirstRate is not null)
        {
            findings.Add(new("cooling-ambiguous", field, null, "The cooling needs exactly one of coolingRate, naturalCooling.timeConstantHours and naturalCooling.firstRate.", ["{\"timeConstantHours\": 5}", "{\"firstRate\": 250}"]));
            return null;
        }

        if (natural.TimeConstantHours is { } tau && tau is not (>= 0.1 and <= 500)) findings.Add(HeatSettings.OutOfRange(field + "/timeConstantHours", tau, "0.1 to 500 hours"));
        var room = temperature(natural.Room, field + "/room") ?? defaults.Take(null, "room", "naturalCooling.room", assumed) + Zero;
        var first = rate(natural.FirstRate, 3000, range, field + "/firstRate", null);
        if (findings.Count > 0 || from <= room) return null;
        return first is { } r ? CoolDown.Natural.StartingAt(r, from, room) : new CoolDown.Natural(natural.TimeConstantHours!.Value, room);
    }

    private static Finding OutOfRange(double sent, bool fahrenheit, string field)
    {
        var asCelsius = (sent - 32) / 1.8;
        return !fahrenheit && sent > LogSamples.HottestCelsius && asCelsius <= LogSamples.HottestCelsius
            ? new("units-suspect", field, FormattableString.Invariant($"{sent:0.##}"), FormattableString.Invariant($"{sent:0.##} °C is hotter than any kiln here."), ["-30 to 1500 °C"], FormattableString.Invariant($"It looks like °F: {sent:0.##} °F is {asCelsius:0} °C. Send it again with \"units\": \"F\"."))
            : HeatSettings.OutOfRange(field, sent, fahrenheit ? "-22 to 2732 °F" : "-30 to 1500 °C");
    }
}
