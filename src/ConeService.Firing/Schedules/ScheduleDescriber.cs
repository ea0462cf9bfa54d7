using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Schedules;

/// <summary>Describes templates as the API lists them.</summary>
/// <param name="book">The templates.</param>
/// <param name="charts">The charts.</param>
internal sealed class ScheduleDescriber(ScheduleBook book, ConeCharts charts)
{
    // What a segment without a rate is taken to do where its end point is looked up; the cone hardly minds.
    private const decimal UsualRate = 60m;

    private static readonly string[] Notes =
    [
        "A template reaches another cone in another kiln: POST /v1/schedules/{id}/fit makes a programme for your cone, kiln and load.",
        "Witness cones beside the ware decide, not the meter. Nothing here replaces the kiln's manual, local codes and licensed practice.",
    ];

    /// <summary>The templates that pass a filter.</summary>
    public ScheduleList List(ScheduleFilter filter) => new(book.Dataset.VersionId, [.. book.Schedules.Where(filter.Passes).Select(Summary)]);

    /// <summary>One template.</summary>
    /// <param name="schedule">The template.</param>
    /// <param name="units">C or F; null when left out.</param>
    public ScheduleDetail Detail(Schedule schedule, string? units)
    {
        List<Assumption> assumed = [new("chart", ConeCharts.DefaultChart, "Cones of the template are shown by the end points of this chart.")];
        if (units is null) assumed.Add(new("units", "C", "No units were asked for; the sentences speak in °C."));
        return new(
            book.Dataset.VersionId, Summary(schedule), units ?? "C", ConeCharts.DefaultChart,
            [.. schedule.Segments.Select(s => Segment(s, units == "F"))], Notes, [.. schedule.Sources], assumed);
    }

    internal static ScheduleSummary Summary(Schedule schedule)
    {
        var row = schedule.Row;
        return new(
            row.Id, row.Title, row.Kind, row.EndCone, row.ConeMin, row.ConeMax, row.RangeConfidence, row.Atmosphere, row.KilnHeats, row.Takes, row.ThicknessMaxMillimetres,
            row.HoursMin, row.HoursMax, row.HoursNote, schedule.Segments.Count, row.Confidence, row.Note, [.. schedule.Sources]);
    }

    private TemplateSegment Segment(ScheduleSegmentRow row, bool fahrenheit)
    {
        var celsius = row.TargetCelsius ?? EndPoint(row);
        return new(
            row.Number,
            SegmentWords.Say(fahrenheit, (double?)row.RateCelsiusPerHour, (double)celsius, row.TargetCone, (double?)row.TargetBelowCelsius, (double)row.HoldMinutes),
            row.Stage, row.Purpose, row.RateCelsiusPerHour, row.RateCelsiusPerHour * 9m / 5m, row.TargetCone, row.TargetBelowCelsius,
            celsius, Temperature.ToFahrenheit(celsius), row.HoldMinutes, row.Atmosphere, row.AtmosphereNote, row.Vent, row.VentNote, row.PublishedFields, row.Confidence, row.Note, row.Sources);
    }

    private decimal EndPoint(ScheduleSegmentRow row)
    {
        var cone = charts.Default.Find(Cone.Parse(row.TargetCone!)) ?? throw new InvalidOperationException($"The default chart does not print cone {row.TargetCone}.");
        // A drop is counted from the peak of the ramp before it, which goes at its own rate.
        var rate = row.TargetBelowCelsius is null ? row.RateCelsiusPerHour ?? UsualRate : UsualRate;
        return Math.Round(cone.At(new HeatingRate(rate))!.Celsius, 1) - (row.TargetBelowCelsius ?? 0);
    }
}
