using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>When somebody must be at the kiln, by the table attendances.</summary>
internal static class Attendances
{
    /// <summary>The periods of a firing, in order, those that overlap as one; their moments are left open.</summary>
    /// <param name="dataset">The tables.</param>
    /// <param name="kind">Kind of the firing.</param>
    /// <param name="heat">What heats the kiln.</param>
    /// <param name="schedule">Id of its schedule; null where it has none, then rows of single schedules are left out.</param>
    /// <param name="times">When what of it happens.</param>
    /// <param name="throughout">True where a local rule asks for somebody at the kiln all the time.</param>
    public static IReadOnlyList<AttendancePeriod> Of(
        Dataset dataset, FiringKind kind, KilnHeat heat, string? schedule, AttendedTimes times, bool throughout)
    {
        var periods = dataset.Attendances
            .Where(a => Belongs(a.Kinds, a.Heats, a.Schedules, kind, heat, schedule))
            .SelectMany(a => Moments(a.Moment, times).Select(m => new AttendancePeriod(
                Math.Max(0, m.From - (double)a.BeforeMinutes), m.To + (double)a.AfterMinutes, Message.Verbatim(a.Statement)!, a.Sources,
                null, null)))
            .ToList();
        if (throughout) periods.Add(new(0, times.EndMinutes, Message.Of("schedules.attended-throughout"), [], null, null));
        return [.. Joined(periods)];
    }

    /// <summary>Whether a row that names kinds, heats or schedules holds of a firing; none named: of all.</summary>
    public static bool Belongs(
        IReadOnlyList<FiringKind> kinds, IReadOnlyList<KilnHeat> heats, IReadOnlyList<string> schedules, FiringKind kind, KilnHeat heat,
        string? schedule) =>
        (kinds.Count == 0 || kinds.Contains(kind))
        && (heats.Count == 0 || heats.Contains(heat))
        && (schedules.Count == 0 || (schedule is not null && schedules.Contains(schedule)));

    private static IEnumerable<(double From, double To)> Moments(AttendanceMoment moment, AttendedTimes times) => moment switch
    {
        AttendanceMoment.Firing => [(0, times.EndMinutes)],
        AttendanceMoment.Start => [(0, 0)],
        AttendanceMoment.Setting => times.Settings.Select(s => (s, s)),
        AttendanceMoment.Vented => times.Vented,
        _ => times.Peak is { } peak ? [peak] : [],
    };

    // What lies within another says nothing new; what overlaps is one period.
    private static IEnumerable<AttendancePeriod> Joined(List<AttendancePeriod> periods)
    {
        var open = periods
            .Where(p => !periods.Exists(q => !ReferenceEquals(p, q) && q.FromMinutes <= p.FromMinutes && q.ToMinutes >= p.ToMinutes
                && (q.ToMinutes - q.FromMinutes > p.ToMinutes - p.FromMinutes || periods.IndexOf(q) > periods.IndexOf(p))))
            .OrderBy(p => p.FromMinutes).ToList();
        for (var i = 0; i < open.Count;)
        {
            var (from, to, reasons) = (open[i].FromMinutes, open[i].ToMinutes, new List<AttendancePeriod>());
            for (; i < open.Count && open[i].FromMinutes <= to; i++)
            {
                to = Math.Max(to, open[i].ToMinutes);
                if (!reasons.Exists(r => r.Message.Equals(open[i].Message))) reasons.Add(open[i]);
            }

            yield return new(
                from, to, reasons is [var one] ? one.Message : Message.Sentences(reasons.Select(r => r.Message)),
                [.. reasons.SelectMany(r => r.Sources).Distinct()], null, null);
        }
    }
}

/// <summary>When what of a firing happens, minutes from the start.</summary>
/// <param name="EndMinutes">The end of the programme, or of the last hold at the peak where that comes later.</param>
/// <param name="Peak">From the peak to the end of the last hold there; null where no programme tells of it.</param>
/// <param name="Settings">When vents, damper or atmosphere are set by hand after the start.</param>
/// <param name="Vented">When the kiln stands open or propped.</param>
internal sealed record AttendedTimes(
    double EndMinutes, (double From, double To)? Peak, IReadOnlyList<double> Settings, IReadOnlyList<(double From, double To)> Vented);
