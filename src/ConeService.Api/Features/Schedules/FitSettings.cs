using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Data;

namespace ConeService.Api.Features.Schedules;

/// <summary>Vents, damper and atmosphere in words.</summary>
internal static class FitSettings
{
    /// <summary>The settings of a segment, one after the other, each but the last with the temperature at which it ends.</summary>
    public static string Words(FittedSegment segment, bool fahrenheit) => string.Join("; then ", segment.Settings.Select((s, i) =>
        Begun(i, Words(s.Vent, s.VentNote, s.Atmosphere, s.AtmosphereNote))
        + (i + 1 < segment.Settings.Count ? $", to {QuantityFormat.Temperature(s.UntilCelsius, fahrenheit)}" : "")));

    /// <summary>One setting: “Damper in; reduction, heavy”.</summary>
    public static string Words(VentSetting setting, string? ventNote, Atmosphere atmosphere, string? atmosphereNote)
    {
        var vent = ventNote?.TrimEnd('.') ?? Words(setting);
        var note = atmosphereNote is { } n ? $", {char.ToLowerInvariant(n[0])}{n[1..].TrimEnd('.')}" : "";
        return $"{char.ToUpperInvariant(vent[0])}{vent[1..]}; {Words(atmosphere)}{note}";
    }

    private static string Begun(int place, string words) => place == 0 ? words : char.ToLowerInvariant(words[0]) + words[1..];

    /// <summary>True where a guard is set that the model sees standing: one that falls is not told to stay up.</summary>
    public static bool GuardStays(ScheduleFit fit) => fit.WitnessCones?.Guard is { } guard
        && !fit.HeatWork.Cones.Any(c => c.Cone == guard && c.DownAtMinutes is not null);

    /// <summary>A word of a table as words.</summary>
    public static string Words<T>(T value)
        where T : struct, Enum => EnumWords.Word(value).Replace('-', ' ');
}
