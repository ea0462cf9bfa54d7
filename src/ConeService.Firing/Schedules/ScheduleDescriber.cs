using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Datasets;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Schedules;

/// <summary>Describes templates as the API lists them.</summary>
/// <param name="catalogue">The templates.</param>
/// <param name="charts">The charts.</param>
internal sealed class ScheduleDescriber(ScheduleCatalogue catalogue, ConeCharts charts)
{
    // What a segment without a rate is taken to do where its end point is looked up; the cone hardly minds.
    private const decimal UsualRate = 60m;

    private static readonly Message[] Notes = [Message.Of("schedules.note-template"), Message.Of("schedules.note-witness-cones")];

    /// <summary>The templates that pass a filter.</summary>
    public ScheduleList List(ScheduleFilter filter) =>
        new(catalogue.Dataset.VersionId, [.. catalogue.Schedules.Where(filter.Passes).Select(Summary)]);

    /// <summary>One template.</summary>
    /// <param name="schedule">The template.</param>
    /// <param name="units">C or F; null when left out.</param>
    public ScheduleDetail Detail(Schedule schedule, string? units)
    {
        List<Assumption> assumed = [new("chart", ConeCharts.DefaultChart, Message.Of("schedules.assumed-chart-of-template"))];
        if (units is null) assumed.Add(new("units", "C", Message.Of("schedules.assumed-units")));
        return new(
            catalogue.Dataset.VersionId, Summary(schedule), units ?? "C", ConeCharts.DefaultChart,
            [.. schedule.Segments.Select(s => Segment(s, units == "F"))], Notes, [.. schedule.Sources], assumed);
    }

    internal static ScheduleSummary Summary(Schedule schedule)
    {
        var row = schedule.Row;
        return new(
            row.Id,
            row.Title,
            row.Kind,
            EndCone: row.EndCone,
            ConeMin: row.ConeMin,
            ConeMax: row.ConeMax,
            RangeConfidence: row.RangeConfidence,
            Atmosphere: row.Atmosphere,
            KilnHeats: row.KilnHeats,
            Takes: row.Takes,
            ThickestMillimetres: row.ThicknessMaxMillimetres,
            DurationMinutesMin: row.HoursMin * 60,
            DurationMinutesMax: row.HoursMax * 60,
            DurationNote: row.HoursNote,
            SegmentCount: schedule.Segments.Count,
            Confidence: row.Confidence,
            Note: row.Note,
            Sources: [.. schedule.Sources]);
    }

    private TemplateSegment Segment(ScheduleSegmentRow row, bool fahrenheit)
    {
        var celsius = row.TargetCelsius ?? EndPoint(row);
        return new(
            row.Number,
            Sentence(row, celsius, fahrenheit),
            row.Stage,
            row.Purpose,
            RateCelsiusPerHour: row.RateCelsiusPerHour,
            RateFahrenheitPerHour: row.RateCelsiusPerHour * 9m / 5m,
            TargetCone: row.TargetCone,
            TargetBelowCelsiusDifference: row.TargetBelowCelsius,
            TargetCelsius: celsius,
            TargetFahrenheit: Temperature.ToFahrenheit(celsius),
            HoldMinutes: row.HoldMinutes,
            Atmosphere: row.Atmosphere,
            AtmosphereNote: row.AtmosphereNote,
            Vent: row.Vent,
            VentNote: row.VentNote,
            PublishedFields: row.PublishedFields,
            Confidence: row.Confidence,
            Note: row.Note,
            Sources: row.Sources,
            Row: TableAddress.Of("schedule-segments", string.Create(
                System.Globalization.CultureInfo.InvariantCulture, $"{row.Schedule}{TableAddress.Between}{row.Number}")));
    }

    private static Message Sentence(ScheduleSegmentRow row, decimal celsius, bool fahrenheit)
    {
        var (rate, hold) = ((double?)row.RateCelsiusPerHour, (double)row.HoldMinutes);
        return (row.TargetCone, row.TargetBelowCelsius) switch
        {
            (null, _) => SegmentSentence.To(fahrenheit, rate, (double)celsius, hold),
            ({ } cone, { } below) => SegmentSentence.BelowCone(fahrenheit, rate, cone, (double)below, hold),
            ({ } cone, _) => SegmentSentence.ToCone(fahrenheit, rate, cone, (double)celsius, hold),
        };
    }

    private decimal EndPoint(ScheduleSegmentRow row)
    {
        var cone = charts.Default.Find(Cone.Parse(row.TargetCone!))
            ?? throw new InvalidOperationException($"The default chart does not print cone {row.TargetCone}.");
        // A drop is counted from the peak of the ramp before it, which goes at its own rate.
        var rate = row.TargetBelowCelsius is null ? row.RateCelsiusPerHour ?? UsualRate : UsualRate;
        return Math.Round(cone.At(new HeatingRate(rate))!.Celsius, 1) - (row.TargetBelowCelsius ?? 0);
    }
}
