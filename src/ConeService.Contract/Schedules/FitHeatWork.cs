using ConeService.Contract.Texts;

namespace ConeService.Contract.Schedules;

/// <summary>What a firing does to the cones around the target.</summary>
/// <param name="Reached">The hottest cone that is down with all cooler ones; null when none is.</param>
/// <param name="Next">The next cone, which stays up.</param>
/// <param name="Fraction">How far from the reached cone to the next, 0 to 0.9999 and never 1. Never add it to a cone number.</param>
/// <param name="Reading">The result as one says it.</param>
/// <param name="TargetProgress">Progress of the target cone: 1 is down; null without a target.</param>
/// <param name="NextProgress">Progress of the cone after the target: below 1 it stays up; null without one.</param>
/// <param name="TargetMarginCelsiusDifference">How far past the target's end point, in degrees of a 60 °C/h firing; negative: short of
/// it.</param>
/// <param name="LastRampShare">Share of the target's progress that the last ramp does; the rest are holds and cooling, which no chart
/// prints.</param>
/// <param name="Cones">The cones around the target, ascending.</param>
public sealed record FitHeatWork(
    string? Reached,
    string? Next,
    double? Fraction,
    Message Reading,
    double? TargetProgress,
    double? NextProgress,
    double? TargetMarginCelsiusDifference,
    double? LastRampShare,
    IReadOnlyList<FitCone> Cones);

/// <summary>One cone along the curve.</summary>
/// <param name="Cone">The cone.</param>
/// <param name="Progress">0 untouched, 1 just down; goes on rising beyond, and 100 stands for over 100.</param>
/// <param name="BendDegrees">How far it leans at the end, 90 when down.</param>
/// <param name="ClockHand">The same as the hour of a clock.</param>
/// <param name="DownAtMinutes">When it goes down, minutes from the start; null when it stays up.</param>
/// <param name="DownAtCelsius">The temperature then, °C.</param>
public sealed record FitCone(
    string Cone,
    double Progress,
    double BendDegrees,
    double ClockHand,
    double? DownAtMinutes,
    double? DownAtCelsius);
