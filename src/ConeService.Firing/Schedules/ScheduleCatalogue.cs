using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Schedules;

/// <summary>All templates of a data package, with the defaults of fitting. Immutable.</summary>
internal sealed class ScheduleCatalogue
{
    private static readonly string[] Needed =
    [
        "cooling-limit-thickness", "drying-hold-glaze", "drying-hold-leather-hard", "drying-hold-most", "drying-hold-per-millimetre",
        "drying-hold-thin", "drying-hold-wet", "drying-temperature", "drying-thickness", "fired-wall-difference", "kiln-cooling-rate",
        "last-ramp-span", "loading-minutes", "start-temperature",
    ];

    // What packages say from a version on: how damp ware is candled; what stands on the sheet of one who fires.
    private static readonly (Version Since, string[] Ids)[] Later =
    [
        (new(1, 6), ["candle-rate", "candle-temperature"]),
        (new(1, 7), ["latest-shut-off", "peak-span"]),
    ];

    private readonly Dictionary<string, Schedule> byId;
    private readonly Dictionary<string, ScheduleDefaultRow> defaults;

    /// <summary>Joins the tables.</summary>
    public ScheduleCatalogue(Dataset dataset)
    {
        Dataset = dataset;
        var segments = dataset.ScheduleSegments.ToLookup(s => s.Schedule, StringComparer.Ordinal);
        Schedules = [.. dataset.ScheduleTemplates.Select(t => new Schedule(t, [.. segments[t.Id]]))];
        byId = Schedules.ToDictionary(s => s.Id, StringComparer.Ordinal);
        defaults = dataset.ScheduleDefaults.ToDictionary(d => d.Id, StringComparer.Ordinal);
    }

    /// <summary>What is missing from a package that fits need.</summary>
    public static IEnumerable<PackageFault> Requires(Dataset dataset) =>
        // A package of before the schedules has none to fit.
        dataset.ScheduleTemplates.Count == 0
            ? []
            : Requirements.Ids(
                dataset, "schedule-defaults", [.. Needed, .. Since(Version.Parse(dataset.VersionId.Split('-', '+')[0]))],
                dataset.ScheduleDefaults.Select(d => d.Id), "fitting a schedule");

    private static IEnumerable<string> Since(Version version) => Later.Where(l => version >= l.Since).SelectMany(l => l.Ids);

    /// <summary>The data package.</summary>
    public Dataset Dataset { get; }

    /// <summary>The templates, by id.</summary>
    public IReadOnlyList<Schedule> Schedules { get; }

    /// <summary>A figure of schedule-defaults.</summary>
    public double Default(string id) => (double)defaults[id].Value;

    /// <summary>A figure that packages of before it do without.</summary>
    public double Default(string id, double absent) => defaults.TryGetValue(id, out var row) ? (double)row.Value : absent;

    /// <summary>The row of a figure of schedule-defaults.</summary>
    public ScheduleDefaultRow DefaultRow(string id) => defaults[id];

    /// <summary>Finds a template by its name.</summary>
    /// <exception cref="RefusedException">There is none of that name; near names are given.</exception>
    public Schedule Find(string id)
    {
        RenamedId.Refuse(Dataset, "schedule-templates", id, "schedule");
        if (byId.TryGetValue(id, out var found)) return found;
        var near = NearMatches.Find(id, byId.Keys);
        throw new RefusedException(new Finding(
            FindingCodes.NotFound, "schedule", id, Message.Of("schedules.not-found", ("id", id)),
            Message.Verbatim(near.Count > 0 ? near : byId.Keys),
            near.Count > 0 ? Message.Of("schedules.not-found-near", ("near", near[0])) : Message.Of("schedules.not-found-listed")));
    }
}
