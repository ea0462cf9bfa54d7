using ConeService.Data;
using ConeService.Firing.Answers;

namespace ConeService.Firing.Schedules;

/// <summary>All templates of a data package, with the defaults of fitting. Immutable.</summary>
public sealed class ScheduleBook
{
    private readonly Dictionary<string, Schedule> byId;
    private readonly Dictionary<string, ScheduleDefaultRow> defaults;

    /// <summary>Joins the tables.</summary>
    public ScheduleBook(Dataset dataset)
    {
        Dataset = dataset;
        var segments = dataset.ScheduleSegments.ToLookup(s => s.Schedule, StringComparer.Ordinal);
        Schedules = [.. dataset.ScheduleTemplates.Select(t => new Schedule(t, [.. segments[t.Id]]))];
        byId = Schedules.ToDictionary(s => s.Id, StringComparer.Ordinal);
        defaults = dataset.ScheduleDefaults.ToDictionary(d => d.Id, StringComparer.Ordinal);
    }

    /// <summary>The data package.</summary>
    public Dataset Dataset { get; }

    /// <summary>The templates, by id.</summary>
    public IReadOnlyList<Schedule> Schedules { get; }

    /// <summary>A figure of schedule-defaults.</summary>
    public double Default(string id) => (double)defaults[id].Value;

    /// <summary>The row of a figure of schedule-defaults.</summary>
    public ScheduleDefaultRow DefaultRow(string id) => defaults[id];

    /// <summary>Finds a template by its name.</summary>
    /// <exception cref="RefusedException">There is none of that name; near names are given.</exception>
    public Schedule Find(string id)
    {
        if (byId.TryGetValue(Dataset.CurrentId("schedule-templates", id), out var found)) return found;
        var near = NearMatches.Find(id, byId.Keys);
        throw new RefusedException(new Finding(
            "not-found", "schedule", id, $"There is no schedule “{id}”.", near.Count > 0 ? near : [.. byId.Keys],
            near.Count > 0 ? $"Probably {near[0]}; all schedules are listed at /v1/schedules." : "All schedules are listed at /v1/schedules."));
    }
}
