using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>How the target of a step is found.</summary>
internal enum StepTarget
{
    /// <summary>A temperature.</summary>
    Fixed,

    /// <summary>The peak, which is solved so that the target cone is down.</summary>
    Peak,

    /// <summary>So far below the peak.</summary>
    BelowPeak,

    /// <summary>Where a cooler cone is down at the end of the step.</summary>
    EarlierCone,
}

/// <summary>One segment of a programme while it is being fitted.</summary>
internal sealed record FitStep
{
    /// <summary>Numbers of the template's segments that it comes from; empty for an added one.</summary>
    public required IReadOnlyList<int> From { get; init; }

    /// <summary>What it is for.</summary>
    public required FiringStage Stage { get; init; }

    /// <summary>What it is for, in words.</summary>
    public required Message Purpose { get; init; }

    /// <summary>Rate, °C/h, above 0 up or down; null: as fast as the kiln goes.</summary>
    public required double? Rate { get; init; }

    /// <summary>How <see cref="Celsius"/> is found.</summary>
    public required StepTarget Target { get; init; }

    /// <summary>Where to, °C: an estimate until the peak is solved, unless it is fixed.</summary>
    public required double Celsius { get; init; }

    /// <summary>How far below the peak, °C, or how many whole cones below the target.</summary>
    public double Below { get; init; }

    /// <summary>Hold, minutes.</summary>
    public required double HoldMinutes { get; init; }

    /// <summary>Atmosphere in the kiln.</summary>
    public required Atmosphere Atmosphere { get; init; }

    /// <summary>How strong, where, or when.</summary>
    public string? AtmosphereNote { get; init; }

    /// <summary>How the kiln is vented.</summary>
    public required VentSetting Vent { get; init; }

    /// <summary>How, in words.</summary>
    public string? VentNote { get; init; }

    /// <summary>The temperature is the peak of a cooler cone, in whole degrees and not round.</summary>
    public bool IsPeak { get; init; }

    /// <summary>The rate may not be exceeded: the thickness of the wall set it.</summary>
    public bool RateLimited { get; init; }

    /// <summary>Rate that a step without one is taken to go at, °C/h.</summary>
    public double TakenRate { get; init; }

    /// <summary>Rate to compute with, °C/h.</summary>
    public double Speed => Rate ?? TakenRate;
}
