using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;
using ConeService.Contract.Plans;
using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing;
using ConeService.Firing.Kilns;

namespace ConeService.Planning.Digest;

/// <summary>
/// Hours, energy and attendance of firings, by the fit of their schedule to what is in them. Remembers what the fit said; not for several
/// threads.
/// </summary>
internal sealed class UsualSchedules(FiringReference reference)
{
    private readonly Dictionary<string, (FittedFiring? Firing, Finding? Cause)> known = [];
    private readonly Dictionary<string, ScheduleSummary?> templates = [];

    // A fit takes some milliseconds.
    private const int Few = 16;

    /// <summary>How many fits were made.</summary>
    public int Fits => known.Count;

    /// <summary>True where so many fits were asked for that those of classes of ware must do.</summary>
    public bool IsBusy => known.Count > Few;

    /// <summary>The fit of a firing; null where no schedule suits or the fit refuses, with what it said.</summary>
    /// <param name="kiln">The kiln.</param>
    /// <param name="firing">The firing.</param>
    /// <param name="ware">The dampest and the thickest in it.</param>
    public (FittedFiring? Firing, Finding? Cause) Of(Kiln kiln, MenuFiring firing, SlowWare ware)
    {
        var fired = $"{Acceptance.Key(kiln, firing)} {firing.Schedule}";
        try
        {
            if (!templates.TryGetValue(fired, out var template)) templates[fired] = template = Template(kiln, firing);
            if (template is null) return (null, null);
            // A schedule for fired ware asks nothing of dryness.
            if (!IsForRaw(template)) ware = ware with { Dryness = Dryness.BoneDry };
            var key = $"{fired} {ware}";
            if (known.TryGetValue(key, out var found)) return found;
            return known[key] = (Fit(template, kiln, firing, ware), null);
        }
        catch (RefusedException refused)
        {
            return (null, refused.Findings[0]);
        }
    }

    private static bool IsForRaw(ScheduleSummary template) =>
        template.Takes[0] is PieceState.Wet or PieceState.LeatherHard or PieceState.BoneDry;

    private ScheduleSummary? Template(Kiln kiln, MenuFiring firing) => firing.Schedule is { } named
        ? reference.Schedules.Detail(named).Schedule
        : Usual(firing, EnumWords.Of<KilnHeat>(kiln.Heat.Text!));

    private FittedFiring Fit(ScheduleSummary template, Kiln kiln, MenuFiring firing, SlowWare ware)
    {
        Patience.Check();
        var fit = reference.Schedules.Fit(template.Id, new FitRequest(
            Cone: template.EndCone is null ? default : firing.Cone, Units: "C", Kiln: kiln with { Shelves = null },
            Load: ware.AsLoad())).Answer;
        return new(
            template.Id,
            ware,
            fit is { Times.OpeningMinutes: { } opening, Kiln: not null } ? (int)Math.Ceiling(opening) : null,
            fit.Kiln is { } forecast ? Energy(forecast) : null,
            fit.Times.PeakMinutes,
            fit.Times.EndMinutes,
            fit.Operation.Attendance);
    }

    // Of several that suit, what a studio takes without saying so; of several of those the one written for the nearest cone.
    private ScheduleSummary? Usual(MenuFiring firing, KilnHeat heat)
    {
        var usual = reference.Dataset.ScheduleTemplates.Where(t => t.IsUsual).Select(t => t.Id).ToHashSet(StringComparer.Ordinal);
        var positions = reference.Dataset.Cones.ToDictionary(c => c.Id, c => c.Position, StringComparer.Ordinal);
        var asked = positions[reference.Cones.Read(firing.Cone.Text!).ToString()];
        return reference.Schedules.List(firing.FiringKind.Text, firing.Cone.Text).Items
            .Where(s => s.KilnHeats.Contains(heat))
            .OrderBy(s => EnumWords.Word(s.Atmosphere) == firing.Atmosphere.Text ? 0 : 1)
            .ThenBy(s => usual.Contains(s.Id) ? 0 : 1)
            .ThenBy(s => s.EndCone is { } end ? Math.Abs(positions[end] - asked) : 0)
            .ThenBy(s => s.Id, StringComparer.Ordinal).FirstOrDefault();
    }

    // Gas is a span without a factor of one's own; its middle is what is planned with.
    private static double Energy(KilnForecast forecast) => forecast.Fuel is { } fuel
        ? fuel.KilowattHours ?? ((fuel.UsualLowKilowattHours + fuel.UsualHighKilowattHours) / 2)
        : forecast.Energy.TotalKilowattHours;
}

/// <summary>What the fit says of a firing. Minutes count from the start.</summary>
/// <param name="Schedule">Id of its schedule.</param>
/// <param name="Ware">The dampest and the thickest that it was fitted to.</param>
/// <param name="Minutes">Until it can be opened, min; null where the kiln is not modelled.</param>
/// <param name="KilowattHours">Energy, kWh; null where the kiln is not modelled.</param>
/// <param name="PeakMinutes">The peak, min.</param>
/// <param name="EndMinutes">The end of the programme, min.</param>
/// <param name="Attendance">When somebody must be there, in order.</param>
internal sealed record FittedFiring(
    string Schedule, SlowWare Ware, int? Minutes, double? KilowattHours, double PeakMinutes, double EndMinutes,
    IReadOnlyList<AttendancePeriod> Attendance);

/// <summary>What a firing takes.</summary>
/// <param name="Schedule">Id of its schedule; null where none was needed.</param>
/// <param name="Minutes">From start until it can be opened, min.</param>
/// <param name="KilowattHours">Energy, kWh; null where not known.</param>
internal sealed record FiringHours(string? Schedule, int Minutes, double? KilowattHours);
