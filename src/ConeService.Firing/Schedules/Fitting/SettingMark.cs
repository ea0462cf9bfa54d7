using ConeService.Data;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>
/// How vents, damper and atmosphere stand up to a temperature on the way. Marks are carried beside the steps: however few segments a
/// controller holds, what is set by hand is set where the template says.
/// </summary>
/// <param name="From">Numbers of the template's segments; empty for an added one.</param>
/// <param name="Target">How the temperature is found.</param>
/// <param name="Celsius">Where the setting ends, °C; unless <paramref name="Target"/> hangs on the peak.</param>
/// <param name="Below">How far below the peak, °C.</param>
/// <param name="HoldMinutes">The template's hold there, minutes.</param>
/// <param name="Cooling">True after the peak.</param>
/// <param name="Vent">How the kiln is vented.</param>
/// <param name="VentNote">How, in words.</param>
/// <param name="Atmosphere">Atmosphere in the kiln.</param>
/// <param name="AtmosphereNote">How strong, where, or when.</param>
internal sealed record SettingMark(
    IReadOnlyList<int> From,
    StepTarget Target,
    double Celsius,
    double Below,
    double HoldMinutes,
    bool Cooling,
    VentSetting Vent,
    string? VentNote,
    Atmosphere Atmosphere,
    string? AtmosphereNote)
{
    /// <summary>True when nothing is to be done by hand between the two.</summary>
    public bool SameSetting(SettingMark other) =>
        Vent == other.Vent && VentNote == other.VentNote && Atmosphere == other.Atmosphere && AtmosphereNote == other.AtmosphereNote;

    /// <summary>The marks of a template with the steps that were added to it.</summary>
    /// <param name="template">The template's own steps, as written.</param>
    /// <param name="steps">The steps before any was joined; the source of what was added and of cooler cones on the way.</param>
    public static IReadOnlyList<SettingMark> Of(IReadOnlyList<FitStep> template, IReadOnlyList<FitStep> steps)
    {
        List<FitStep> all =
        [
            .. steps.TakeWhile(s => s.From.Count == 0),
            .. template.Select(s => s.Target == StepTarget.EarlierCone ? Solved(s, steps) : s),
            .. steps.Reverse().TakeWhile(s => s.From.Count == 0).Reverse(),
        ];
        var hottest = all.FindLastIndex(s => s.Target == StepTarget.Peak);
        if (hottest < 0) hottest = all.FindIndex(s => s.Celsius == all.Max(x => x.Celsius));
        return
        [
            .. all.Select((s, i) => new SettingMark(
                s.From, s.Target, s.Celsius, s.Below, s.HoldMinutes, i > hottest, s.Vent, s.VentNote, s.Atmosphere, s.AtmosphereNote)),
        ];
    }

    private static FitStep Solved(FitStep step, IReadOnlyList<FitStep> steps) =>
        steps.LastOrDefault(s => s.From.Contains(step.From[0])) is { } solved
            ? step with { Celsius = solved.Celsius, Target = StepTarget.Fixed }
            : step;
}
