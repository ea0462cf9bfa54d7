using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Api.Features.Schedules;

/// <summary>A firing as entries of a booking calendar, RFC 5545: loading, vents, peak, earliest opening.</summary>
internal static class FitCalendar
{
    public const string MediaType = "text/calendar";

    // RFC 5545, 3.1: lines of at most 75 octets; the rest goes on after a line break and a blank.
    private const int LineOctets = 75;
    private const int AttendMinutes = 60;

    /// <summary>Writes the calendar.</summary>
    /// <param name="fit">The fit; it must have a start.</param>
    /// <param name="stamp">Now: a later import of the same firing replaces the earlier one.</param>
    /// <exception cref="RefusedException">The request named no start.</exception>
    public static string Write(ScheduleFit fit, DateTimeOffset stamp)
    {
        if (fit.Times is not { Start: { } start, Loading: { } loading, Peak: { } peak, End: { } end })
        {
            throw new RefusedException(new Finding(
                FindingCodes.MemberMissing, "/start", null, Message.Of("schedules.calendar-start-missing"),
                Message.Verbatim(["2026-12-04T18:00:00+01:00"]), Message.Of("schedules.calendar-start-mistake")));
        }

        var text = new StringBuilder();
        string[] head = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//ConeService//Firing calendar//EN", "CALSCALE:GREGORIAN"];
        foreach (var line in head) Line(text, line);
        var name = Name(fit);
        var facts = Facts(fit);
        if (loading < start) Event(text, fit, stamp, "loading", loading, start, $"Load: {name}", facts);
        Event(text, fit, stamp, "firing", start, end, $"Firing: {name}", facts);
        foreach (var (vent, i) in fit.Times.Vents.Select((v, i) => (v, i)))
        {
            var until = QuantityFormat.Temperature(vent.ToCelsius, fit.Units == "F");
            Event(
                text, fit, stamp, FormattableString.Invariant($"vent-{i + 1}"), vent.From!.Value, vent.To!.Value,
                $"Vent {Words(vent)}: {name}",
                $"{vent.Note ?? Words(vent) + "."} Until {until}; trust the pyrometer more than the clock.");
        }

        foreach (var (part, i) in fit.Times.Settings.Where(s => s.Atmosphere != Atmosphere.Oxidation).Select((s, i) => (s, i)))
        {
            var until = QuantityFormat.Temperature(part.ToCelsius, fit.Units == "F");
            var words = FitSettings.Words(part.Vent, part.VentNote, part.Atmosphere, part.AtmosphereNote);
            Event(
                text, fit, stamp, FormattableString.Invariant($"atmosphere-{i + 1}"), part.From!.Value, part.To!.Value,
                $"Atmosphere {FitSettings.Words(part.Atmosphere)}: {name}",
                $"{words}. Until {until}; trust the pyrometer more than the clock.");
        }

        Event(
            text, fit, stamp, "peak", peak.AddMinutes(-AttendMinutes), peak, $"Peak, attend: {name}",
            $"Peak about {QuantityFormat.Temperature((double)fit.PeakCelsius, fit.Units == "F")}. {Watch(fit)}");
        if (fit.Times.Opening is { } opening)
        {
            Event(
                text, fit, stamp, "opening", opening, opening.AddMinutes(AttendMinutes), $"Earliest opening: {name}",
                "Not before chamber and ware are below 95 °C (203 °F), by the pyrometer and not by the clock.");
        }

        Line(text, "END:VCALENDAR");
        return text.ToString();
    }

    private static string Name(ScheduleFit fit) =>
        fit.Schedule.Name + (fit.Cone is { } cone ? $", cone {cone}" : "") + (fit.Kiln?.Id is { } kiln ? $", {kiln}" : "");

    private static string Facts(ScheduleFit fit)
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

    private static string Watch(ScheduleFit fit) => fit.WitnessCones is { } cones
        ? $"Witness cones: when the guide{(cones.Guide is { } guide ? $" ({guide})" : "")} falls, watch; "
            + $"when the target ({cones.Target}) points where it should, the firing is done, whatever the meter says; "
            + $"the guard{(cones.Guard is { } guard ? $" ({guard})" : "")} must stay up."
        : "Judge by eye.";

    private static string Words(VentPeriod vent) =>
        EnumWords.Word(vent.Vent).Replace('-', ' ');

    private static void Event(
        StringBuilder text,
        ScheduleFit fit,
        DateTimeOffset stamp,
        string part,
        DateTimeOffset from,
        DateTimeOffset to,
        string summary,
        string description)
    {
        Line(text, "BEGIN:VEVENT");
        Line(text, $"UID:{Uid(fit, part)}");
        Line(text, $"DTSTAMP:{Utc(stamp)}");
        Line(text, $"DTSTART:{Utc(from)}");
        Line(text, $"DTEND:{Utc(to > from ? to : from.AddMinutes(1))}");
        Line(text, $"SUMMARY:{Escape(summary)}");
        Line(text, $"DESCRIPTION:{Escape(description)}");
        Line(text, $"CATEGORIES:{part.Split('-')[0].ToUpperInvariant()}");
        // Loading and firing keep the kiln busy; the others are reminders within or after it.
        Line(text, part is "loading" or "firing" ? "TRANSP:OPAQUE" : "TRANSP:TRANSPARENT");
        Line(text, "END:VEVENT");
    }

    // The same firing at the same time in the same kiln is the same event, whatever else changed.
    private static string Uid(ScheduleFit fit, string part)
    {
        var start = fit.Times.Start!.Value.UtcTicks;
        var identity = string.Create(CultureInfo.InvariantCulture, $"{fit.Schedule.Id}|{fit.Kiln?.Id}|{start}|{part}");
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(identity)).AsSpan(0, 16)) + "@cone-service";
    }

    private static string Utc(DateTimeOffset time) => time.UtcDateTime.ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture);

    private static string Escape(string text) => text
        .Replace("\\", "\\\\", StringComparison.Ordinal)
        .Replace(";", "\\;", StringComparison.Ordinal)
        .Replace(",", "\\,", StringComparison.Ordinal)
        .Replace("\r", "", StringComparison.Ordinal)
        .Replace("\n", "\\n", StringComparison.Ordinal);

    private static void Line(StringBuilder text, string line)
    {
        var octets = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > LineOctets)
            {
                text.Append("\r\n ");
                octets = 1;
            }

            text.Append(rune.ToString());
            octets += rune.Utf8SequenceLength;
        }

        text.Append("\r\n");
    }
}
