using ConeService.Contract.Cones;
using ConeService.Data;

namespace ConeService.Firing.Schedules;

/// <summary>A template with its segments and cones.</summary>
internal sealed class Schedule
{
    /// <summary>Joins a template with its segments.</summary>
    public Schedule(ScheduleTemplateRow row, IReadOnlyList<ScheduleSegmentRow> segments)
    {
        Row = row;
        Segments = segments;
        EndCone = row.EndCone is { } end ? Cone.Parse(end) : null;
        Coolest = row.ConeMin is { } low ? Cone.Parse(low) : null;
        Hottest = row.ConeMax is { } high ? Cone.Parse(high) : null;
    }

    /// <summary>The template's row.</summary>
    public ScheduleTemplateRow Row { get; }

    /// <summary>Name of the template.</summary>
    public string Id => Row.Id;

    /// <summary>The segments, in order.</summary>
    public IReadOnlyList<ScheduleSegmentRow> Segments { get; }

    /// <summary>The cone that it is written for; null when it ends by temperature or by eye.</summary>
    public Cone? EndCone { get; }

    /// <summary>Coolest cone that it can be fitted to.</summary>
    public Cone? Coolest { get; }

    /// <summary>Hottest cone that it can be fitted to.</summary>
    public Cone? Hottest { get; }

    /// <summary>True when the template can be fitted to a cone.</summary>
    public bool Takes(Cone cone) => Coolest is { } low && Hottest is { } high && low <= cone && cone <= high;

    /// <summary>True when it is made for ware that was never fired, whatever else it takes.</summary>
    public bool TakesGreenware => Row.Takes.Any(s => s is PieceState.Wet or PieceState.LeatherHard or PieceState.BoneDry);

    /// <summary>Every source behind the template and its segments.</summary>
    public IEnumerable<string> Sources => Row.Sources.Concat(Segments.SelectMany(s => s.Sources)).Distinct();
}
