using ConeService.Contract.Quantities;
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

/// <summary>Go to a temperature, then hold there.</summary>
/// <param name="RateCelsiusPerHour">How fast, °C/h, above 0 whether up or down; null: full power up, no power down.</param>
/// <param name="TargetCelsius">Where to, °C.</param>
/// <param name="HoldHours">How long to stay there, h. The hold starts when the chamber is there.</param>
internal sealed record KilnSegment(double? RateCelsiusPerHour, double TargetCelsius, double HoldHours = 0);
