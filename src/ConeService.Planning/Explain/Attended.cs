using System.Globalization;
using ConeService.Contract.Kilns;
using ConeService.Contract.Plans;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing;
using ConeService.Firing.Schedules.Fitting;
using ConeService.Planning.Digest;

namespace ConeService.Planning.Explain;

/// <summary>When somebody must be at the kiln for a firing of a plan, as its fitted sheet says it, and when nobody is there then.</summary>
internal sealed class Attended(FiringReference reference, Digested digested)
{
    /// <summary>The times, in order.</summary>
    /// <param name="kiln">The kiln.</param>
    /// <param name="firing">The firing.</param>
    /// <param name="fitted">What the fit says of it; null where none does.</param>
    /// <param name="start">When it starts, min.</param>
    public IReadOnlyList<PlanAttendance> Of(Kiln kiln, DigestedFiring firing, FittedFiring? fitted, int start)
    {
        var heat = EnumWords.Of<KilnHeat>(kiln.Heat.Text!);
        var periods = fitted?.Attendance ?? WithoutFit(firing, heat);
        return [.. periods.Select(p => Told(p, start, heat != KilnHeat.Electric))];
    }

    /// <summary>A warning for a firing with hours in which nobody is there; null where somebody always is.</summary>
    /// <param name="told">The firing as it is told.</param>
    /// <param name="pointer">Where in the request it stands, or the firing of the menu.</param>
    public static PlanWarning? Warning(PlanFiring told, string pointer)
    {
        var alone = told.Attendance.Where(a => a.NobodyThere.Count > 0).ToList();
        if (alone.Count == 0) return null;
        var flame = alone.Exists(a => a.LiveFlame);
        return new(
            flame ? PlanWarningCodes.LiveFlameAlone : PlanWarningCodes.NobodyThere,
            Message.Of(
                flame ? "plans.live-flame-alone" : "plans.nobody-there",
                ("number", told.Number), ("kiln", told.KilnId), ("firing", told.FiringKind), ("cone", told.Cone),
                ("hours", string.Join("; ", alone.SelectMany(a => a.NobodyThere).Select(Words))),
                ("why", Message.Sentences(alone.Select(a => a.Message).Distinct()))),
            pointer);
    }

    // A sheet is not told of; what burns is attended until it can be opened at the latest, and how a start is looked after needs no sheet.
    private IReadOnlyList<AttendancePeriod> WithoutFit(DigestedFiring firing, KilnHeat heat) => Attendances.Of(
        reference.Dataset, EnumWords.Of<FiringKind>(firing.Sent.FiringKind.Text!), heat, firing.Hours.Schedule,
        new(firing.Hours.Minutes, null, [], []), false);

    private PlanAttendance Told(AttendancePeriod period, int start, bool flame)
    {
        var (from, to) = (start + (int)Math.Floor(period.FromMinutes), start + (int)Math.Ceiling(period.ToMinutes));
        var gaps = digested.Staffed?.Without(from, to) ?? [];
        return new(
            digested.Moments.At(from), digested.Moments.At(to), flame, period.Message, period.Sources,
            [.. gaps.Select(g => new PlanTime(digested.Moments.At(g.From), digested.Moments.At(g.To)))]);
    }

    private static string Words(PlanTime time)
    {
        const string Day = "ddd d MMM HH:mm";
        var to = time.To.ToString(time.From.Date == time.To.Date ? "HH:mm" : Day, CultureInfo.InvariantCulture);
        return $"{time.From.ToString(Day, CultureInfo.InvariantCulture)} to {to}";
    }
}
