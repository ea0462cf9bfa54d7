using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using ConeService.Contract.Plans;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace ConeService.Api.Features.Plans;

/// <summary>
/// A plan as entries of a booking calendar, RFC 5545: the kiln is busy from loading until it is unloaded; loading, start and unloading have
/// entries of their own, with an alarm.
/// </summary>
internal static class PlanCalendar
{
    private const string Producer = "-//ConeService//Firing plan//EN";

    /// <summary>Writes the calendar.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="stamp">Now: a later plan of the same firing replaces the earlier one.</param>
    public static string Write(FiringPlan plan, DateTimeOffset stamp)
    {
        var calendar = new Ical.Net.Calendar { ProductId = Producer };
        foreach (var firing in plan.Firings)
        {
            var name = PlanWords.Name(firing);
            Add(
                firing, "kiln", firing.LoadingFrom, firing.UnloadedAt, $"Kiln busy: {name}",
                string.Join('\n', PlanWords.Attendance(firing).Prepend(PlanWords.Summary(firing))), busy: true);
            Add(
                firing, "loading", firing.LoadingFrom, firing.Start, $"Load: {name}",
                string.Join('\n', PlanWords.Lines(firing).Concat(PlanWords.Notes(firing))), alarm: true);
            Add(
                firing, "unloading", firing.OpeningFrom, firing.UnloadedAt, $"Open and unload: {name}",
                "Not before chamber and ware stay below 95 °C (203 °F), by the pyrometer and not by the clock.", alarm: true);
        }

        return new CalendarSerializer().SerializeToString(calendar)!;

        void Add(
            PlanFiring firing, string part, DateTimeOffset from, DateTimeOffset to, string summary, string description, bool busy = false,
            bool alarm = false)
        {
            var entry = new CalendarEvent
            {
                Uid = Uid(firing, part),
                DtStamp = Utc(stamp),
                Start = Utc(from),
                // An entry of no length is none.
                End = Utc(to > from ? to : from.AddMinutes(1)),
                Summary = summary,
                Description = description,
                Categories = [part.ToUpperInvariant()],
                Transparency = busy ? TransparencyType.Opaque : TransparencyType.Transparent,
            };
            if (alarm)
            {
                entry.Alarms.Add(new Alarm
                {
                    Action = AlarmAction.Display,
                    Description = summary,
                    Trigger = new Trigger(Duration.FromMinutes(-15)),
                });
            }

            calendar.Events.Add(entry);
        }
    }

    // The same firing at the same time in the same kiln is the same event, whatever else changed.
    private static string Uid(PlanFiring firing, string part)
    {
        var identity = string.Create(
            CultureInfo.InvariantCulture, $"plan|{firing.KilnId}|{firing.Start.UtcTicks}|{firing.FiringKind}|{firing.Cone}|{part}");
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(identity)).AsSpan(0, 16)) + "@cone-service";
    }

    private static CalDateTime Utc(DateTimeOffset time) => new(time.UtcDateTime, "UTC");
}
