using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>The landmarks that this ware passes, with the times at which it does.</summary>
internal static class FitLandmarks
{
    // Which rows of the landmarks table concern which firing; the table itself does not say.
    private const string Unload = "unload";
    private static readonly string[] Every = ["quartz-up", "quartz-down", "cristobalite-inv", Unload];
    private static readonly string[] OfSomeKinds =
    [
        "decal-vent", "glaze-seal", "iron-reduce", "lustre-close", "raku-draw", "salt-melt", "salt-vapour",
    ];

    private static readonly string[] Green = ["free-water", "organics", "bound-water-kaolin", "carbon-sulphur"];

    /// <summary>What is missing from a package whose schedules pass landmarks.</summary>
    public static IEnumerable<PackageFault> Requires(Dataset dataset)
    {
        // A package of before the schedules passes none.
        if (dataset.ScheduleTemplates.Count == 0 || dataset.Landmarks.Count == 0) return [];
        string[] needed = [.. Every, .. Green, .. OfSomeKinds];
        return Requirements.Ids(dataset, "landmarks", needed, dataset.Landmarks.Select(l => l.Id), "fitting a schedule");
    }

    /// <summary>The landmarks, in order of time.</summary>
    /// <param name="dataset">The table.</param>
    /// <param name="question">The question.</param>
    /// <param name="curve">The chamber.</param>
    /// <param name="openingHours">When chamber and ware are cool enough to open the kiln, h; null when unknown.</param>
    public static IReadOnlyList<FitLandmark> Along(Dataset dataset, FitQuestion question, HeatHistory curve, double? openingHours)
    {
        var wanted = Wanted(question).ToHashSet(StringComparer.Ordinal);
        var found = new List<FitLandmark>();
        foreach (var row in dataset.Landmarks.Where(l => wanted.Contains(l.Id)))
        {
            if (row.Phase is LandmarkPhase.Heating or LandmarkPhase.Either) Add(found, row, Up(curve, row), cooling: false);
            if (row.Phase is LandmarkPhase.Cooling or LandmarkPhase.Either) Add(found, row, Down(curve, row, openingHours), cooling: true);
        }

        return [.. found.OrderBy(l => l.FromMinutes).ThenBy(l => l.Id, StringComparer.Ordinal)];
    }

    private static IEnumerable<string> Wanted(FitQuestion question)
    {
        var kind = question.Schedule.Row.Kind;
        IEnumerable<string> special = kind switch
        {
            FiringKind.Salt => ["salt-melt", "salt-vapour"],
            FiringKind.Raku => ["raku-draw"],
            FiringKind.Overglaze => question.Schedule.Id.Contains("lustre", StringComparison.Ordinal) ? ["lustre-close"] : ["decal-vent"],
            FiringKind.Single => ["glaze-seal"],
            _ => [],
        };
        var reduces = question.Schedule.Row.Atmosphere == Atmosphere.Reduction && kind != FiringKind.Saggar;
        return Every.Concat(question.Greenware ? Green : []).Concat(special).Concat(reduces ? ["iron-reduce"] : []);
    }

    private static void Add(List<FitLandmark> found, LandmarkRow row, (double From, double? To)? span, bool cooling)
    {
        if (span is not { } s) return;
        found.Add(new(
            row.Id,
            row.Landmark,
            cooling,
            FromMinutes: FitMinutes.Of(s.From),
            ToMinutes: FitMinutes.Of(s.To),
            CelsiusMin: row.CelsiusLow,
            CelsiusMax: row.CelsiusHigh,
            Advice: row.Advice,
            Confidence: row.Confidence,
            Sources: row.Sources));
    }

    private static (double From, double? To)? Up(HeatHistory curve, LandmarkRow row) =>
        HistoryCrossing.At(curve, (double)row.CelsiusLow, up: true) is { } from
            ? (from, HistoryCrossing.At(curve, (double)row.CelsiusHigh, up: true))
            : null;

    private static (double From, double? To)? Down(HeatHistory curve, LandmarkRow row, double? openingHours)
    {
        // Ware that never was hotter does not pass it on the way down.
        if (curve.Peak.Kelvin - Temperature.KelvinAtZero <= (double)row.CelsiusHigh) return null;
        // The ware lags behind the chamber: it is unloaded when the kiln may be opened, and not before.
        if ((row.Id == Unload ? openingHours : HistoryCrossing.At(curve, (double)row.CelsiusHigh, up: false)) is not { } from) return null;
        return (from, HistoryCrossing.At(curve, (double)row.CelsiusLow, up: false) is { } to && to >= from ? to : null);
    }
}
