using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace ConeService.Api.Features.HeatWork;

/// <summary>The end and the opening of a firing under way as entries of a calendar, RFC 5545.</summary>
internal static class ForecastCalendar
{
    private const string Producer = "-//ConeService//Firing forecast//EN";

    /// <summary>Writes the calendar.</summary>
    /// <param name="forecast">The forecast; its question must have had a start.</param>
    /// <param name="stamp">Now: a later forecast of the same firing replaces the earlier one.</param>
    /// <exception cref="RefusedException">The request named no start.</exception>
    public static string Write(Forecast forecast, DateTimeOffset stamp)
    {
        var answer = forecast.Answer;
        if (answer.Now.At is not { } now)
        {
            throw new RefusedException(new Finding(
                FindingCodes.MemberMissing, "/start", null, Message.Of("forecast.calendar-start-missing"),
                Message.Verbatim(["2026-12-04T18:00:00+01:00"])));
        }

        var calendar = new Ical.Net.Calendar { ProductId = Producer };
        var name = $"cone {answer.Cone}" + (answer.Kiln?.Id is { } kiln ? $", {kiln}" : "");
        var began = now.AddMinutes(-answer.Now.Minutes);
        if (answer.End.RemainingMinutes > 0)
        {
            Add("end", answer.End, $"End of firing, attend: {name}", $"{answer.Lines[0]} {answer.Lines[1]}");
        }

        if (answer.Opening is { } opening) Add("opening", opening, $"Earliest opening: {name}", answer.Lines[2].ToString());
        return new CalendarSerializer().SerializeToString(calendar)!;

        // From the earliest to the latest: the span is what has to be reckoned with.
        void Add(string part, ForecastMoment moment, string summary, string description) => calendar.Events.Add(new CalendarEvent
        {
            Uid = Uid(answer, began, part),
            DtStamp = Utc(stamp),
            Start = Utc(moment.Earliest!.Value),
            End = Utc(moment.Latest > moment.Earliest ? moment.Latest.Value : moment.Earliest.Value.AddMinutes(1)),
            Summary = summary,
            Description = description,
            Transparency = Ical.Net.TransparencyType.Transparent,
        });
    }

    // The same firing in the same kiln is the same event, whatever is foreseen of it next.
    private static string Uid(ForecastAnswer answer, DateTimeOffset began, string part)
    {
        var identity = string.Create(CultureInfo.InvariantCulture, $"forecast|{answer.Kiln?.Id}|{answer.Cone}|{Minute(began)}|{part}");
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(identity)).AsSpan(0, 16)) + "@cone-service";
    }

    private static long Minute(DateTimeOffset time) => time.UtcTicks / TimeSpan.TicksPerMinute;

    private static CalDateTime Utc(DateTimeOffset time) => new(time.UtcDateTime, "UTC");
}
