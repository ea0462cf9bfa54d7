using ConeService.Contract.Answers;

namespace ConeService.Contract.Equations;

/// <summary>The equations that answers name: rows of <c>equations</c>.</summary>
public static class EquationIds
{
    /// <summary>Progress of a cone through any history.</summary>
    public const string BendingProgress = "bending-progress";

    /// <summary>The curve of a cone without kinetics of its own.</summary>
    public const string BorrowedCurve = "borrowed-curve";

    /// <summary>Which rule or note decides on a colour.</summary>
    public const string ColourOfARecipe = "colour-of-a-recipe";

    /// <summary>The cone reached by a steady ramp.</summary>
    public const string ConeReached = "cone-reached";

    /// <summary>The end point at a steady rate.</summary>
    public const string EndPointOfARamp = "end-point-of-a-ramp";

    /// <summary>The end point as a chart prints it.</summary>
    public const string EndPointPrinted = "end-point-printed";

    /// <summary>What a firing under way will do.</summary>
    public const string FiringForecast = "firing-forecast";

    /// <summary>The peak of a fitted schedule.</summary>
    public const string FittedPeak = "fitted-peak";

    /// <summary>The hold that puts a cone just down.</summary>
    public const string HoldForACone = "hold-for-a-cone";

    /// <summary>The heat balance of a kiln.</summary>
    public const string KilnHeatBalance = "kiln-heat-balance";

    /// <summary>The offset of a meter by witness cones.</summary>
    public const string MeterOffset = "meter-offset";

    /// <summary>The peak that puts a cone just down.</summary>
    public const string PeakForACone = "peak-for-a-cone";

    /// <summary>The rate of the last segment that puts a cone just down.</summary>
    public const string RateForACone = "rate-for-a-cone";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        BendingProgress, BorrowedCurve, ColourOfARecipe, ConeReached, EndPointOfARamp, EndPointPrinted, FiringForecast, FittedPeak,
        HoldForACone, KilnHeatBalance, MeterOffset, PeakForACone, RateForACone,
    ];

    /// <summary>Address of an equation.</summary>
    public static Address Address(string id) => new("/v1/equations/" + id);
}
