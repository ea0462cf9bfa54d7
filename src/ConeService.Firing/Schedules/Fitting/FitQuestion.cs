using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.Kilns;
using ConeService.Firing.Schedules.Fitting.Starting;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>A fit request that was read: everything typed, everything left out decided.</summary>
internal sealed record FitQuestion
{
    /// <summary>The template.</summary>
    public required Schedule Schedule { get; init; }

    /// <summary>The target on its chart; null for a template that ends without a cone.</summary>
    public required FitTarget? Target { get; init; }

    /// <summary>The chart.</summary>
    public required ConeChart Chart { get; init; }

    /// <summary>True for °F.</summary>
    public required bool Fahrenheit { get; init; }

    /// <summary>The kiln's name, as sent.</summary>
    public required string? KilnId { get; init; }

    /// <summary>What heats the kiln; null without a kiln.</summary>
    public required KilnHeat? Heat { get; init; }

    /// <summary>Kiln and load for the model; null without a kiln, and for a wood kiln.</summary>
    public required KilnSetup? Kiln { get; init; }

    /// <summary>Hottest cone of the kiln.</summary>
    public required Cone? MaxCone { get; init; }

    /// <summary>Hottest that the kiln's maker allows, °C; null when not stated.</summary>
    public required double? MaxCelsius { get; init; }

    /// <summary>How much less power the elements give at the voltage they get, as a share of the rated power; 1 when not stated.</summary>
    public required double VoltageShare { get; init; }

    /// <summary>Segments that the controller holds; null: no limit.</summary>
    public required int? ControllerSegments { get; init; }

    /// <summary>Thickest wall, mm; null when nothing is known.</summary>
    public required double? ThicknessMillimetres { get; init; }

    /// <summary>True for flatware, which lies on the shelf and is heated from one side.</summary>
    public required bool Flat { get; init; }

    /// <summary>Thickness, mm, of a wall heated from both sides that lags as much: what is heated from one side lags with all of its
    /// thickness and not with the half. Null when nothing is known.</summary>
    public double? LagMillimetres => Flat ? 2 * ThicknessMillimetres : ThicknessMillimetres;

    /// <summary>True for ware that was never fired.</summary>
    public required bool Greenware { get; init; }

    /// <summary>How dry it is.</summary>
    public required Dryness Dryness { get; init; }

    /// <summary>The coat on the ware.</summary>
    public required GlazeCoat Glaze { get; init; }

    /// <summary>When the programme starts, and the clock that it is told by.</summary>
    public required FitClock Clock { get; init; }

    /// <summary>True where a local rule asks for somebody at the kiln for the whole firing.</summary>
    public required bool AttendedThroughout { get; init; }

    /// <summary>When the programme starts; null when not stated.</summary>
    public DateTimeOffset? Start => Clock.Start;

    /// <summary>What chooses the start, or prices it by the clock; null where nothing does.</summary>
    public StartWish? Starting { get; init; }

    /// <summary>How long loading takes, minutes.</summary>
    public required double LoadingMinutes { get; init; }

    /// <summary>Temperature of kiln and load at the start, °C.</summary>
    public required double StartCelsius { get; init; }

    /// <summary>Temperature of the room, °C.</summary>
    public required double RoomCelsius { get; init; }

    /// <summary>Price of a kWh; null when not stated.</summary>
    public required double? PricePerKilowattHour { get; init; }

    /// <summary>Its currency.</summary>
    public required string? Currency { get; init; }

    /// <summary>Parameters that were left out.</summary>
    public required IReadOnlyList<Assumption> Assumed { get; init; }

    /// <summary>True for green ware that still holds water to be driven off slowly.</summary>
    public bool Damp => Greenware && Dryness != Dryness.BoneDry;

    /// <summary>True where the firing ends with the ware drawn from the hot kiln.</summary>
    public bool Drawn => Schedule.Row.Kind == FiringKind.Raku;

    /// <summary>True when the kiln is fired with wire elements.</summary>
    public bool IsElectric => Heat is null or KilnHeat.Electric;
}

/// <summary>The cone that the fit aims at.</summary>
/// <param name="Cone">The cone.</param>
/// <param name="Next">The next hotter cone of the chart, which must stay up; null at the end of the chart.</param>
/// <param name="Clock">The hour that it shall point at.</param>
/// <param name="Progress">The progress that this is.</param>
internal sealed record FitTarget(ChartCone Cone, ChartCone? Next, double Clock, double Progress)
{
    /// <summary>The progress that the programme is given, so that the kiln, which lags, comes to <see cref="Progress"/>.</summary>
    public double Aim { get; init; } = Progress;
}
