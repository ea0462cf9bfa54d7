using ConeService.Contract.Quantities;
using ConeService.Data;
using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Kilns;

/// <summary>What the controller is told; afterwards the kiln cools by itself, closed.</summary>
/// <param name="Segments">The segments, in order; at least one.</param>
/// <param name="StartCelsius">Temperature of kiln and load at the start, °C.</param>
/// <param name="RoomCelsius">Temperature of the room, °C.</param>
internal sealed record KilnProgramme(IReadOnlyList<KilnSegment> Segments, double StartCelsius = 20, double RoomCelsius = 20)
{
    private const double Hottest = 1400;
    private const double NearRoom = 5;

    /// <summary>
    /// The programme of a heat-work programme; its own idea of cooling and of full speed is left out, as the kiln decides both.
    /// </summary>
    public static KilnProgramme Of(HeatProgramme programme, double roomCelsius = 20) => new(
        [.. programme.Segments.Select(s => new KilnSegment(s.RateKelvinPerHour, s.TargetKelvin - Temperature.KelvinAtZero, s.HoldHours))],
        programme.StartKelvin - Temperature.KelvinAtZero,
        roomCelsius);

    /// <summary>Its hours by the clock, each segment at least a minute, as which a ramp at full power counts.</summary>
    public double PlannedHours()
    {
        var (hours, from) = (0.0, StartCelsius);
        foreach (var segment in Segments)
        {
            var ramp = segment.RateCelsiusPerHour is { } rate ? Math.Abs(segment.TargetCelsius - from) / rate : 0;
            hours += Math.Max(1.0 / 60, ramp + segment.HoldHours);
            from = segment.TargetCelsius;
        }

        return hours;
    }

    /// <summary>Refuses what no firing is; a caller's findings come before.</summary>
    /// <exception cref="ArgumentException">No segment, or a number outside its range.</exception>
    internal void Check()
    {
        if (Segments.Count == 0) throw new ArgumentException("A programme needs a segment.");
        InRange(StartCelsius, -20, Hottest, "start");
        InRange(RoomCelsius, -20, 60, "room");
        foreach (var segment in Segments)
        {
            InRange(segment.TargetCelsius, RoomCelsius + NearRoom, Hottest, "target");
            InRange(segment.HoldHours, 0, KilnModel.LongestHours, "hold");
            InRange(segment.RateCelsiusPerHour ?? 1, 0.1, 10000, "rate");
        }
    }

    private static void InRange(double value, double low, double high, string what)
    {
        if (!(value >= low && value <= high))
            throw new ArgumentException($"The {what} of a programme must lie between {low} and {high}; it is {value}.");
    }
}

/// <summary>How the kiln is vented until the chamber has come to a temperature.</summary>
/// <param name="UntilCelsius">The temperature, °C.</param>
/// <param name="Vent">How it is vented.</param>
internal readonly record struct VentedTo(double UntilCelsius, VentSetting Vent);

/// <summary>Go to a temperature, then hold there.</summary>
/// <param name="RateCelsiusPerHour">How fast, °C/h, above 0 whether up or down; null: full power up, no power down.</param>
/// <param name="TargetCelsius">Where to, °C.</param>
/// <param name="HoldHours">How long to stay there, h. The hold starts when the chamber is there.</param>
/// <param name="Vents">How the kiln is vented on the way, in order; the last one through the hold too. Null: as normal.</param>
internal sealed record KilnSegment(
    double? RateCelsiusPerHour, double TargetCelsius, double HoldHours = 0, IReadOnlyList<VentedTo>? Vents = null)
{
    /// <summary>How the kiln is vented at the end and through the hold.</summary>
    public VentSetting LastVent => Vents is { Count: > 0 } vents ? vents[^1].Vent : VentSetting.AsNormal;

    /// <summary>How it is vented at a temperature on the way.</summary>
    /// <param name="celsius">The chamber, °C.</param>
    /// <param name="direction">Below 0 on the way down.</param>
    public VentSetting VentAt(double celsius, int direction)
    {
        for (var i = 0; i < Vents?.Count; i++)
        {
            if (direction < 0 ? celsius > Vents[i].UntilCelsius : celsius < Vents[i].UntilCelsius) return Vents[i].Vent;
        }

        return LastVent;
    }
}
