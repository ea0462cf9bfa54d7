using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using NodaTime;
using Duration = Ical.Net.DataTypes.Duration;

namespace ConeService.Api.Features.Schedules;

/// <summary>
/// A firing as entries of a booking calendar, RFC 5545: the kiln is busy from loading until it may be opened; what needs a person has an
/// entry of its own, with an alarm.
/// </summary>
internal sealed class FitCalendar
{
    public const string MediaType = "text/calendar";

    private const string Producer = "-//ConeService//Firing calendar//EN";
    private const double SetMinutes = 10;

    private readonly ScheduleFit fit;
    private readonly string name;
    private readonly DateTimeZone? zone;
    private readonly CalDateTime stamp;
    private readonly Ical.Net.Calendar calendar = new() { ProductId = Producer };

    private FitCalendar(ScheduleFit fit, DateTimeOffset now)
    {
        (this.fit, zone, stamp) = (fit, FitMoments.Zone(fit), new(now.UtcDateTime, "UTC"));
        name = fit.Schedule.Name + (fit.Cone is { } cone ? $", cone {cone}" : "") + (fit.Kiln?.Id is { } kiln ? $", {kiln}" : "");
    }

    /// <summary>Writes the calendar.</summary>
    /// <param name="fit">The fit; it must have a start.</param>
    /// <param name="stamp">Now: a later import of the same firing replaces the earlier one.</param>
    /// <exception cref="RefusedException">The request named no start.</exception>
    public static string Write(ScheduleFit fit, DateTimeOffset stamp)
    {
        if (fit.Times.Start is null)
        {
            throw new RefusedException(new Finding(
                FindingCodes.MemberMissing, "/start", null, Message.Of("schedules.calendar-start-missing"),
                Message.Verbatim(["2026-12-04T18:00:00+01:00"]), Message.Of("schedules.calendar-start-mistake")));
        }

        var writer = new FitCalendar(fit, stamp);
        writer.Kiln();
        writer.Settings();
        writer.Attendance();
        writer.Ends();
        return new CalendarSerializer().SerializeToString(writer.calendar)!;
    }

    private double Opened => fit.Operation.OpeningSpan?.LatestMinutes ?? fit.Times.EndMinutes;

    // What keeps the kiln busy.
    private void Kiln()
    {
        var (times, facts) = (fit.Times, Facts());
        var loading = -(times.Start! - times.Loading)!.Value.TotalMinutes;
        if (zone is not null)
            calendar.AddTimeZone(VTimeZone.FromDateTimeZone(zone.Id, times.Loading!.Value.UtcDateTime.AddYears(-1), false));
        if (loading < 0) Add("loading", loading, 0, $"Load: {name}", Steps(facts, ProcedurePhase.Prepare), busy: true, alarm: 15);
        if (times.Settings is [var first, ..])
            Add("closing", Math.Max(loading, -SetMinutes), 0, $"Close lid or door, set vents: {name}", Words(first) + ".", alarm: 0);
        Add(
            "firing", 0, times.EndMinutes, $"Firing: {name}",
            Steps(facts, ProcedurePhase.Follow, ProcedurePhase.Stop), busy: true, alarm: 0);
        if (Opened > times.EndMinutes)
            Add("cooling", times.EndMinutes, Opened, $"Closed, cooling: {name}", "Nobody opens the kiln or books it before.", busy: true);
    }

    private void Settings()
    {
        var (times, f) = (fit.Times, fit.Units == "F");
        foreach (var (i, vent) in times.Vents.Index())
        {
            var until = QuantityFormat.Temperature(vent.ToCelsius, f);
            Add(
                FormattableString.Invariant($"vent-{i + 1}"), vent.FromMinutes, vent.ToMinutes,
                $"Vent {FitSettings.Words(vent.Vent)}: {name}",
                $"{vent.Note ?? FitSettings.Words(vent.Vent) + "."} Until {until}; trust the pyrometer more than the clock.");
        }

        foreach (var (i, part) in times.Settings.Where(s => s.Atmosphere != Atmosphere.Oxidation).Index())
        {
            var until = QuantityFormat.Temperature(part.ToCelsius, f);
            Add(
                FormattableString.Invariant($"atmosphere-{i + 1}"), part.FromMinutes, part.ToMinutes,
                $"Atmosphere {FitSettings.Words(part.Atmosphere)}: {name}",
                $"{Words(part)}. Until {until}; trust the pyrometer more than the clock.");
        }

        foreach (var (i, now) in times.Settings.Skip(1).Index())
        {
            var at = QuantityFormat.Temperature(now.FromCelsius, f);
            Add(
                FormattableString.Invariant($"setting-{i + 1}"), now.FromMinutes - SetMinutes, now.FromMinutes + SetMinutes,
                $"Set at {at}: {Words(now)}: {name}", $"{Words(now)}, at {at}; trust the pyrometer more than the clock.", alarm: 10);
        }
    }

    private void Attendance()
    {
        foreach (var (i, period) in fit.Operation.Attendance.Index())
        {
            Add(
                FormattableString.Invariant($"attend-{i + 1}"), period.FromMinutes, period.ToMinutes, $"Somebody at the kiln: {name}",
                period.Message.ToString(), alarm: 30);
        }
    }

    private void Ends()
    {
        var (peak, f) = (fit.Operation.PeakSpan, fit.Units == "F");
        Add(
            "peak", peak.EarliestMinutes, peak.LatestMinutes, $"Peak, attend: {name}",
            $"Peak about {QuantityFormat.Temperature((double)fit.PeakCelsius, f)}, about {FitMoments.Words(fit, fit.Times.PeakMinutes)}. "
            + Watch(), alarm: 30);
        if (fit.Operation.LatestShutOffMinutes is { } latest)
        {
            Add(
                "shut-off", latest, latest + SetMinutes, $"Latest shut-off: {name}",
                "A kiln that still climbs or holds its peak now is switched off by hand.", alarm: 0);
        }

        if (fit.Operation.OpeningSpan is { } opening)
        {
            Add(
                "opening", opening.EarliestMinutes, opening.LatestMinutes, $"Earliest opening: {name}",
                Steps("Not before chamber and ware are below 95 °C (203 °F), by the pyrometer and not by the clock.", ProcedurePhase.Open),
                alarm: 0);
        }
    }

    private string Facts()
    {
        var lines = fit.Segments.Select(s => FormattableString.Invariant($"{s.Number}. {s.InWords} ({s.Purpose})")).ToList();
        if (fit.WitnessCones is { } cones)
            lines.Add($"Witness cones: guide {cones.Guide ?? "none"}, target {cones.Target}, guard {cones.Guard ?? "none"}.");
        if (fit.Kiln is { Instead: { } instead }) lines.Add(instead.ToString());
        lines.Add(fit.Times.Basis == "kiln-model"
            ? "Times by the kiln model; a real kiln differs."
            : "Times by the programme; the cooling is a guess.");
        return string.Join("\n", lines);
    }

    private string Steps(string head, params ProcedurePhase[] phases) => string.Join(
        "\n", fit.Operation.Procedure.Where(p => phases.Contains(p.Phase)).Select(p => p.Message.ToString()).Prepend(head));

    private string Watch() => fit.WitnessCones is { } cones
        ? $"Witness cones: when the guide{(cones.Guide is { } guide ? $" ({guide})" : "")} falls, watch; "
            + $"when the target ({cones.Target}) points where it should, the firing is done, whatever the meter says"
            + FitSettings.GuardStays(fit) switch { true => $"; the guard ({cones.Guard}) must stay up.", _ => "." }
        : "Judge by eye.";

    private static string Words(SettingPeriod part) => FitSettings.Words(part.Vent, part.VentNote, part.Atmosphere, part.AtmosphereNote);

    private void Add(
        string part, double from, double to, string summary, string description, bool busy = false, int? alarm = null)
    {
        var entry = new CalendarEvent
        {
            Uid = Uid(part),
            DtStamp = stamp,
            Start = Moment(from),
            // An entry of no length is none.
            End = Moment(Math.Max(to, from + 1)),
            Summary = summary,
            Description = description,
            Categories = [part.Split('-')[0].ToUpperInvariant()],
            // The others are reminders within or after what keeps the kiln busy.
            Transparency = busy ? TransparencyType.Opaque : TransparencyType.Transparent,
        };
        if (alarm is { } minutes)
        {
            entry.Alarms.Add(new Alarm
            {
                Action = AlarmAction.Display,
                Description = summary,
                Trigger = new Trigger(Duration.FromMinutes(-minutes)),
            });
        }

        calendar.Events.Add(entry);
    }

    // An hour that the clocks go through twice can only be told apart in UTC (RFC 5545, 3.3.5, form 3 means its first run).
    private CalDateTime Moment(double minutes)
    {
        var at = FitMoments.At(fit, minutes)!.Value;
        at = new(at.Ticks - (at.Ticks % TimeSpan.TicksPerMinute), at.Offset);
        return zone is null || zone.MapLocal(LocalDateTime.FromDateTime(at.DateTime)).Count != 1
            ? new(at.UtcDateTime, "UTC")
            : new(at.DateTime, zone.Id);
    }

    // The same firing at the same time in the same kiln is the same event, whatever else changed.
    private string Uid(string part)
    {
        var start = fit.Times.Start!.Value.UtcTicks;
        var identity = string.Create(CultureInfo.InvariantCulture, $"{fit.Schedule.Id}|{fit.Kiln?.Id}|{start}|{part}");
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(identity)).AsSpan(0, 16)) + "@cone-service";
    }
}
