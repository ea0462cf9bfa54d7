using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Problems;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>Reads the chart and the cone that a fit aims at.</summary>
/// <param name="charts">The charts.</param>
internal sealed class FitTargetReader(ConeCharts charts)
{
    /// <summary>The chart; null when it can't be used.</summary>
    public ConeChart? Chart(string? sent, List<Assumption> assumed, List<Finding> findings) => ChartInput.ReadFollowable(
        charts, sent, "/chart", Message.Of("cones.chart-for-schedules", ("chart", ConeCharts.DefaultChart)), assumed, findings);

    /// <summary>The target cone; null when there is none, or it can't be aimed at.</summary>
    public FitTarget? Target(
        Schedule schedule, FitRequest request, ConeChart? chart, List<Assumption> assumed, List<Finding> findings)
    {
        if (request.Cone.IsAbsent)
        {
            if (schedule.EndCone is { } own)
            {
                findings.Add(new(
                    FindingCodes.MemberMissing, "/cone", null, Message.Of("schedules.cone-missing", ("schedule", schedule.Id)),
                    [Message.Of("schedules.cone-range-quoted", ("low", $"{schedule.Coolest}"), ("high", $"{schedule.Hottest}"))],
                    Message.Of("schedules.cone-written-for", ("cone", own.ToString()))));
            }

            return null;
        }

        if (!ConeInput.TryRead(charts.Scale, request.Cone, "/cone", out var cone, out var wrong))
        {
            findings.Add(wrong!);
            return null;
        }

        if (!schedule.Takes(cone))
        {
            findings.Add(OutsideRange(schedule, cone, request.Cone.Text));
            return null;
        }

        if (chart is null) return null;
        var rate = chart.DefaultRate!.Value;
        if (chart.Find(cone) is not { } found || found.Curve(rate) is null)
        {
            var near = chart.Cones.Where(c => c.Curve(rate) is not null && schedule.Takes(c.Cone))
                .OrderBy(c => Math.Abs(c.Cone.Position - cone.Position)).Take(3).Select(c => c.Cone.ToString());
            findings.Add(new(
                FindingCodes.ConeNotOnChart, "/cone", cone.ToString(),
                Message.Of("schedules.cone-not-on-chart", ("chart", chart.Id), ("cone", cone.ToString())), Message.Verbatim(near)));
            return null;
        }

        if (request.ClockHand is null) assumed.Add(new("clockHand", "6", Message.Of("schedules.assumed-clock-hand")));
        var clock = request.ClockHand ?? 6;
        var next = chart.Cones.FirstOrDefault(c => c.Cone > cone && c.Curve(rate) is not null);
        return new(found, next, clock, clock >= 6 ? 1 : ConeBend.Progress(clock * 15));
    }

    private static Finding OutsideRange(Schedule schedule, Cone cone, string? sent)
    {
        if (schedule.EndCone is null)
        {
            return new(
                FindingCodes.ScheduleWithoutCone, "/cone", sent, Message.Of("schedules.template-without-cone", ("schedule", schedule.Id)),
                [Message.Of("schedules.leave-cone-out")]);
        }

        return new(
            FindingCodes.ConeOutsideSchedule, "/cone", sent,
            Message.Of("schedules.cone-outside", ("cone", cone.ToString()), ("schedule", schedule.Id)),
            [Message.Of("schedules.cone-range", ("low", $"{schedule.Coolest}"), ("high", $"{schedule.Hottest}"))],
            schedule.Takes(cone.MixUp)
                ? Message.Of("schedules.cone-mix-up", ("cone", cone.MixUp.ToString()), ("zero", cone.IsZeroCone ? "without" : "with"))
                : Message.Of("schedules.list-for-cone"));
    }
}
