using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork.Logs;
using ConeService.Firing.Kilns;
using ConeService.Firing.Schedules.Fitting;

namespace ConeService.Firing.HeatWork.Forecasting;

/// <summary>Reads a question on a firing under way; what is left out is decided and said so.</summary>
/// <param name="calculator">Follows firings; knows the charts and the defaults.</param>
/// <param name="model">The kiln model.</param>
internal sealed class ForecastReader(HeatWorkCalculator calculator, KilnModel model)
{
    private const double Zero = Temperature.KelvinAtZero;

    // Without a schedule that says better: small electric kilns (schedule-defaults, kiln-cooling-rate, where the package has it).
    private const string CoolingDefault = "kiln-cooling-rate";
    private const decimal UsualCooling = 150;

    // A kiln that is asked for the temperature of its room waits for ever.
    private const double AboveRoomKelvin = 5;
    private const double SlowestKelvinPerHour = 0.1;

    private readonly ForecastKilnReader kilns = new(calculator.Charts.Scale, model);

    /// <summary>Reads a request whose form was checked.</summary>
    /// <param name="request">The question.</param>
    /// <param name="read">Its log, where that came by itself; null: that of the request.</param>
    /// <exception cref="RefusedException">Something can't be answered; carries every finding.</exception>
    public ForecastQuestion Read(ForecastRequest request, CleanLog? read)
    {
        var assumed = new List<Assumption>();
        var together = new Together();
        var known = Known(request, assumed, together);
        var log = read ?? together.Try(() => LogSamples.Read(Measured(request), ""));
        var rest = log is null
            ? together.Try(() => Unlogged(request))
            : together.Try(() => ReadRest(request, log, known.Kiln is not null, assumed));
        if (known.Kiln is not null) RefuseBeyondModel(rest.Left, request.Segments, together.Findings);
        together.Done();
        assumed.InsertRange(0, known.Settings!.Assumed);
        return new(
            known.Settings with { Assumed = [] }, known.Cone!, log!, rest.Left, rest.FullSpeed, rest.Cooling, request.Units == "F",
            known.Id, known.Heat, known.Kiln, known.Start, [.. assumed.Select(a => a.InBody())]);
    }

    /// <summary>Reads what of a request can be read, whatever is wrong with its form.</summary>
    /// <exception cref="RefusedException">Something can't be answered; carries every finding.</exception>
    public void Check(ForecastRequest request)
    {
        var together = new Together();
        var judged = request with { Units = request.Units is "C" or "F" ? request.Units : RequestCheck.Judged(request.Units) };
        _ = Known(judged, [], together);
        if (judged.Log is not null) together.Try(() => LogSamples.Read(Measured(judged), ""));
        if (judged.Segments is null or { Count: > 0 and <= HeatWorkCheck.MostSegments }) together.Try(() => Unlogged(judged));
        together.Done();
    }

    // All but the log and what follows it.
    private Asked Known(ForecastRequest request, List<Assumption> assumed, Together together)
    {
        var findings = new List<Finding>();
        var measured = Measured(request);
        var settings = HeatSettings.Read(calculator.Charts, measured, "", findings);
        if (request.Thermocouple is null && request.Kiln?.Thermocouple is not null) OfKiln(settings, findings);
        var cone = ReadCone(request, settings, findings);
        var start = MomentReader.Read(request.Start, "/start", null, assumed, findings);
        var (id, heat, setup) = kilns.Read(request, assumed, findings);
        if (setup is not null) RefuseBesideKiln(request, findings);
        foreach (var finding in findings) together.Findings.Add(finding);
        return new(settings, cone, start, id, heat, setup);
    }

    // The rest of the programme where no log tells from which temperature it goes on: from its first target, from which no segment climbs.
    private (IReadOnlyList<HeatSegment>? Left, double FullSpeed, CoolDown Cooling) Unlogged(ForecastRequest request)
    {
        if (request.Segments is null) return default;
        var asked = new HeatWorkRequest
        {
            Units = request.Units,
            Start = request.Segments[0]?.Target,
            Segments = request.Segments,
            CoolingRate = request.CoolingRate,
            NaturalCooling = request.NaturalCooling,
            FullSpeedRate = request.FullSpeedRate,
        };
        try
        {
            return (ProgrammeReader.Read(asked, "", calculator.Defaults, [], "hold").Segments, 0, null!);
        }
        catch (RefusedException refused)
        {
            // The start is none that was sent: what is wrong with it is told of the segment.
            throw new RefusedException([.. refused.Findings.Where(f => f.Field != "/start")]);
        }
    }

    private sealed record Asked(
        HeatSettings? Settings, ChartCone? Cone, DateTimeOffset? Start, string? Id, KilnHeat? Heat, KilnSetup? Kiln);

    private static HeatWorkRequest Measured(ForecastRequest request) => new()
    {
        Units = request.Units,
        Log = request.Log,
        Chart = request.Chart,
        Thermocouple = request.Thermocouple ?? request.Kiln?.Thermocouple,
        Uncertainty = request.Uncertainty,
        Atmosphere = request.Atmosphere,
    };

    // The thermocouple was taken from the kiln: what is said of it stands there.
    private static void OfKiln(HeatSettings? settings, List<Finding> findings)
    {
        for (var i = 0; i < findings.Count; i++)
        {
            if (findings[i].Field.StartsWith("/thermocouple", StringComparison.Ordinal))
                findings[i] = findings[i] with { Field = "/kiln" + findings[i].Field };
        }

        for (var i = 0; i < settings?.Assumed.Count; i++)
        {
            if (settings.Assumed[i].Field.StartsWith("thermocouple.", StringComparison.Ordinal))
                settings.Assumed[i] = settings.Assumed[i] with { Field = "kiln." + settings.Assumed[i].Field };
        }
    }

    private ChartCone? ReadCone(ForecastRequest request, HeatSettings? settings, List<Finding> findings)
    {
        if (!ConeInput.TryRead(calculator.Charts.Scale, request.Cone, "/cone", out var cone, out var wrong))
        {
            findings.Add(wrong!);
            return null;
        }

        if (settings is null) return null;
        if (settings.Chart.Find(cone) is not { } found)
        {
            findings.Add(new(
                FindingCodes.ConeNotOnChart, "/cone", cone.ToString(), EndPointCalculator.NotOnChart(settings.Chart, cone),
                [Message.Of("heat-work.a-cone-of-the-chart")]));
            return null;
        }

        if (found.Curve(settings.Chart.DefaultRate!.Value) is not null) return found;
        findings.Add(new(
            FindingCodes.RateNotComputable, "/cone", cone.ToString(),
            Message.Of("heat-work.none-to-borrow", ("chart", settings.Chart.Id), ("cone", cone.ToString())),
            [Message.Of("heat-work.another-cone"), Message.Verbatim(ConeCharts.DefaultChart)]));
        return null;
    }

    private static void RefuseBesideKiln(ForecastRequest request, List<Finding> findings)
    {
        (object? Sent, string Member)[] decided =
        [
            (request.CoolingRate, "/coolingRate"), (request.NaturalCooling, "/naturalCooling"), (request.FullSpeedRate, "/fullSpeedRate"),
        ];
        findings.AddRange(decided.Where(d => d.Sent is not null).Select(d => new Finding(
            FindingCodes.FiringAmbiguous, d.Member, null, Message.Of("forecast.beside-kiln"), Message.Verbatim(["kiln"]))));
    }

    private static void RefuseBeyondModel(
        IReadOnlyList<HeatSegment>? rest, IReadOnlyList<ProgrammeSegment?>? sent, List<Finding> findings)
    {
        for (var i = 0; i < rest?.Count && findings.Count < 20; i++)
        {
            var at = string.Create(CultureInfo.InvariantCulture, $"/segments/{i}");
            if (rest[i].TargetKelvin < Room + AboveRoomKelvin)
                findings.Add(HeatSettings.OutOfRange(at + "/target", sent![i]!.Target ?? 0, Message.Of("forecast.target-above-room")));
            if (rest[i].RateKelvinPerHour < SlowestKelvinPerHour)
                findings.Add(HeatSettings.OutOfRange(at + "/rate", sent![i]!.Rate ?? 0, Message.Of("forecast.rate-of-a-kiln")));
            if (rest[i].HoldHours > KilnModel.LongestHours)
                findings.Add(HeatSettings.OutOfRange(at + "/holdMinutes", rest[i].HoldHours * 60, Message.Of("forecast.hold-of-a-kiln")));
        }
    }

    /// <summary>Temperature of the room that the kiln model takes, K.</summary>
    internal const double Room = 20 + Zero;

    private (IReadOnlyList<HeatSegment>? Left, double FullSpeed, CoolDown Cooling) ReadRest(
        ForecastRequest request, CleanLog log, bool isModelled, List<Assumption> assumed)
    {
        var now = log.History.End.Kelvin - Zero;
        var cooling = request is { CoolingRate: null, NaturalCooling: null } ? Assumed(request, log, isModelled ? null : assumed) : null;
        var asked = new HeatWorkRequest
        {
            Units = request.Units,
            Start = request.Units == "F" ? (now * 1.8) + 32 : now,
            // Without anything left only the cooling is read.
            Segments = request.Segments ?? [new(null, request.Units == "F" ? (now * 1.8) + 32 : now)],
            CoolingRate = request.CoolingRate,
            NaturalCooling = cooling ?? request.NaturalCooling,
            FullSpeedRate = request.FullSpeedRate,
        };
        var taken = new List<Assumption>();
        var programme = ProgrammeReader.Read(asked, "", calculator.Defaults, taken, "hold");
        if (!isModelled) assumed.AddRange(taken);
        if (request.Segments is null) assumed.Add(new("segments", "not stated", Message.Of("forecast.assumed-no-segments")));
        // The programme begins at a hot kiln, which is not where its cooling ends.
        var room = calculator.Defaults["room"] + Zero;
        var left = request.Segments is null ? null : programme.Segments;
        if (cooling is not null && Interruption.Find(log.History, left)?.Cooling(log.History, room) is { } seen)
        {
            if (!isModelled) Replace(assumed, seen);
            return (left, programme.FullSpeedKelvinPerHour, seen);
        }

        return (
            left, programme.FullSpeedKelvinPerHour,
            programme.Cooling is CoolDown.AtRate steady ? steady with { ToKelvin = room } : programme.Cooling!);
    }

    private static void Replace(List<Assumption> assumed, CoolDown.Natural seen)
    {
        var minutes = string.Create(CultureInfo.InvariantCulture, $"{seen.TimeConstantHours * 60:0} minutes");
        assumed[assumed.FindIndex(a => a.Field == "naturalCooling")] = new(
            "naturalCooling.timeConstantMinutes", minutes, Message.Of("forecast.seen-cooling"));
    }

    private NaturalCooling Assumed(ForecastRequest request, CleanLog log, List<Assumption>? assumed)
    {
        var rate = calculator.Charts.Dataset.ScheduleDefaults.FirstOrDefault(d => d.Id == CoolingDefault)?.Value ?? UsualCooling;
        assumed?.Add(new(
            "naturalCooling", string.Create(CultureInfo.InvariantCulture, $"{rate} °C/h"), Message.Of("forecast.assumed-cooling")));
        var hottest = (request.Segments ?? []).Select(s => s?.Target).Append(null).Max() is { } most
            ? request.Units == "F" ? (most - 32) / 1.8 : most
            : log.History.Peak.Kelvin - Zero;
        var excess = Math.Clamp(Math.Max(hottest, log.History.Peak.Kelvin - Zero) - calculator.Defaults["room"], 100, 1500);
        return new(TimeConstantMinutes: excess / (double)rate * 60);
    }
}
