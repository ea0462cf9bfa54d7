using ConeService.Contract.Cones;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Colours;

/// <summary>How far a firing goes: its cone, and that cone as a temperature.</summary>
/// <param name="Cone">The cone.</param>
/// <param name="Celsius">Its end point on the default chart at the usual rate, °C; null where that chart does not print it.</param>
internal sealed record FiringHeat(Cone Cone, decimal? Celsius)
{
    /// <summary>The heat of a cone.</summary>
    public static FiringHeat Of(Cone cone, ConeCharts charts) =>
        new(cone, charts.Default.Find(cone)?.At(charts.Default.DefaultRate)?.Celsius);

    /// <summary>True where a range of cones ends below this heat, or begins above it.</summary>
    public bool Outside(string? coneLow, string? coneHigh) =>
        (coneLow is not null && Cone < Cone.Parse(coneLow)) || (coneHigh is not null && Cone > Cone.Parse(coneHigh));

    /// <summary>True outside a usable range, or beyond the point above which something happens; false where nothing can be told.</summary>
    public bool Beyond(TemperatureLimitRow limit) => limit.Kind == TemperatureLimitKind.UsableRange
        ? Outside(limit.ConeLow, limit.ConeHigh) || Celsius < limit.CelsiusLow || Celsius > limit.CelsiusHigh
        : limit.ConeLow is { } cone ? Cone > Cone.Parse(cone) : Celsius >= limit.CelsiusLow;
}
