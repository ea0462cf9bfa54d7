using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>Why no value solves an inverse question.</summary>
internal enum Unsolvable
{
    /// <summary>The rest of the programme puts the cone down already, whatever the value.</summary>
    TooMuchWork,

    /// <summary>No value does enough work.</summary>
    TooLittleWork,
}

/// <summary>The answer to an inverse question.</summary>
/// <param name="Value">The value that puts the cone just down: K for a peak, h for a hold, K/h for a rate; null when there is none.</param>
/// <param name="Why">Why there is none; null on success.</param>
/// <param name="OtherProgress">Progress that the rest of the programme makes without the part asked for.</param>
internal readonly record struct ProgrammeSolution(double? Value, Unsolvable? Why, double OtherProgress);

/// <summary>
/// Inverse questions: which hold, which rate, or which peak puts a cone just down (I = 1), given the rest of the
/// programme.
/// </summary>
internal static class ProgrammeSolver
{
    /// <summary>How long to hold in a segment, h. I is linear in it.</summary>
    public static ProgrammeSolution Hold(BendingCurve curve, HeatProgramme programme, int segment)
    {
        var old = programme.Segments[segment];
        var rest = programme.With(segment, old with { HoldHours = 0 }).Progress(curve);
        // Just down by rounding alone is a hold of 0, not an impossible one.
        if (rest > 2 - HeatIntegral.Down) return new(null, Unsolvable.TooMuchWork, rest);
        var hours = Math.Max(0, 1 - rest) / curve.BendRate(old.TargetKelvin);
        return double.IsFinite(hours) ? new(hours, null, rest) : new(null, Unsolvable.TooLittleWork, rest);
    }

    /// <summary>How fast to go in a segment, K/h. I is linear in its inverse.</summary>
    public static ProgrammeSolution Rate(BendingCurve curve, HeatProgramme programme, int segment)
    {
        var from = segment == 0 ? programme.StartKelvin : programme.Segments[segment - 1].TargetKelvin;
        var rest = WithoutRamp(curve, programme, segment);
        if (rest >= 1) return new(null, Unsolvable.TooMuchWork, rest);
        // At 1 K/h a ramp lasts as many hours as it has kelvins.
        var target = programme.Segments[segment].TargetKelvin;
        var atOne = HeatIntegral.OfPiece(curve, from, target, Math.Abs(target - from));
        return atOne > 0 ? new(atOne / (1 - rest), null, rest) : new(null, Unsolvable.TooLittleWork, rest);
    }

    /// <summary>Where to go in a segment, K, between two limits; bisection, as I rises with the target of the hottest segment.</summary>
    public static ProgrammeSolution Peak(
        BendingCurve curve, HeatProgramme programme, int segment, double lowestKelvin, double highestKelvin)
    {
        double At(double kelvin) => programme.With(segment, programme.Segments[segment] with { TargetKelvin = kelvin }).Progress(curve);
        var (low, high) = (lowestKelvin, highestKelvin);
        var least = At(low);
        if (least >= 1) return new(null, Unsolvable.TooMuchWork, least);
        if (At(high) < 1) return new(null, Unsolvable.TooLittleWork, least);
        while (high - low > ResolutionKelvin)
        {
            Patience.Check();
            var middle = 0.5 * (low + high);
            if (At(middle) < 1) low = middle;
            else high = middle;
        }

        return new(high, null, least);
    }

    private const double ResolutionKelvin = 1e-7;

    // Before and after the ramp apart: a difference of two whole firings would lose digits.
    private static double WithoutRamp(BendingCurve curve, HeatProgramme programme, int segment)
    {
        var before = programme with { Segments = [.. programme.Segments.Take(segment)], Cooling = null };
        var after = programme with
        {
            StartKelvin = programme.Segments[segment].TargetKelvin,
            Segments = [.. programme.Segments.Skip(segment)],
        };
        return before.Progress(curve) + after.Progress(curve);
    }
}
