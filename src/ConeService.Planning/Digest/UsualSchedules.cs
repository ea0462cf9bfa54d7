using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;
using ConeService.Contract.Plans;
using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing;

namespace ConeService.Planning.Digest;

/// <summary>Hours and energy of firings, by the fit of their schedule.</summary>
internal sealed class UsualSchedules(FiringReference reference)
{
    private readonly Dictionary<string, (FiringHours? Hours, Finding? Cause)> known = [];

    /// <summary>Hours and energy of a firing; null where no schedule suits or the fit refuses, with what it said.</summary>
    public (FiringHours? Hours, Finding? Cause) Of(Kiln kiln, MenuFiring firing)
    {
        var key = $"{Acceptance.Key(kiln, firing)} {firing.Schedule}";
        if (!known.TryGetValue(key, out var found)) known[key] = found = Fit(kiln, firing);
        return found;
    }

    private (FiringHours? Hours, Finding? Cause) Fit(Kiln kiln, MenuFiring firing)
    {
        try
        {
            var heat = EnumWords.Of<KilnHeat>(kiln.Heat.Text!);
            var template = firing.Schedule is { } named
                ? reference.Schedules.Detail(named).Schedule
                : Usual(firing, heat);
            if (template is null) return (null, null);
            var fit = reference.Schedules.Fit(template.Id, new FitRequest(
                Cone: template.EndCone is null ? default : firing.Cone, Units: "C", Kiln: kiln with { Shelves = null })).Answer;
            if (fit.Times.OpeningMinutes is not { } opening || fit.Kiln is not { } forecast) return (null, null);
            return (new(template.Id, (int)Math.Ceiling(opening), Energy(forecast)), null);
        }
        catch (RefusedException refused)
        {
            return (null, refused.Findings[0]);
        }
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

/// <summary>What a firing takes.</summary>
/// <param name="Schedule">Id of its schedule; null where none was needed.</param>
/// <param name="Minutes">From start until it can be opened, min.</param>
/// <param name="KilowattHours">Energy, kWh; null where not known.</param>
internal sealed record FiringHours(string? Schedule, int Minutes, double? KilowattHours);
