using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>
/// Recognises in the times of a clock on the wall, whose place is not known, that it was put on or back by an hour in the night, and
/// undoes it. Where the hour would decide the answer, it is asked back.
/// </summary>
internal static class ClockChange
{
    private const double NearTopKelvin = 150;

    // A log that is sparser than this can't tell a step and an hour apart.
    private const double SparsestHours = 0.5;
    private const double LeastTolerance = 1.0 / 60;

    // Clocks are changed between midnight and four.
    private const double LatestHour = 4.05;
    private const double SlopeThatTells = 12;

    /// <summary>Undoes a change, in place.</summary>
    /// <param name="points">The samples in the order of the log, hours of the wall.</param>
    /// <param name="dated">True when the hours count from the year 1, so that the day is known.</param>
    /// <param name="fieldOf">Names a sample.</param>
    /// <param name="warnings">What was found is told here.</param>
    /// <exception cref="RefusedException">An hour vanishes near the top.</exception>
    public static void Undo(Span<HeatPoint> points, bool dated, Func<int, string> fieldOf, List<HeatWarning> warnings)
    {
        if (points.Length < 5 || points[^1].Hours < points[0].Hours - 2) return;
        var usual = UsualStep(points);
        if (usual is <= 0 or > SparsestHours) return;
        var tolerance = Math.Max(LeastTolerance, 0.6 * usual);
        var (shift, changes) = (0.0, new List<double>());
        var previous = points[0].Hours;
        for (var i = 1; i < points.Length; i++)
        {
            var wall = points[i].Hours;
            var step = wall - previous;
            previous = wall;
            if (Math.Abs(Math.Abs(step - usual) - 1) <= tolerance && IsNight(Math.Max(wall, wall - step), dated))
            {
                if (step < 0) (shift, _) = (shift + 1, changes);
                else if (Vanished(points, i, usual, fieldOf)) shift -= 1;
                else step = 0;
                if (step != 0) changes.Add(wall + shift - points[0].Hours);
            }

            points[i] = points[i] with { Hours = wall + shift };
        }

        if (changes.Count > 0) warnings.Add(HeatWarning.At(WarningCodes.ClockChanged, Message.Of("logs.clock-changed"), changes));
    }

    // True when the clock was put on, false when the logger was silent for an hour.
    private static bool Vanished(ReadOnlySpan<HeatPoint> points, int at, double usual, Func<int, string> fieldOf)
    {
        var peak = double.NegativeInfinity;
        foreach (var point in points) peak = Math.Max(peak, point.Kelvin);
        if (Math.Max(points[at - 1].Kelvin, points[at].Kelvin) > peak - NearTopKelvin)
        {
            throw new RefusedException(new Finding(
                FindingCodes.LogClockChange, fieldOf(at), null, Message.Of("logs.hour-vanished"),
                Message.Verbatim(["?timeZone=Europe/Berlin", "?timeZone=America/New_York", "?timeZone=UTC"]),
                Message.Of("logs.clock-or-gap")));
        }

        var before = Math.Max(0, at - 6);
        var hours = points[at - 1].Hours - points[before].Hours;
        if (hours <= 0) return false;
        var slope = (points[at - 1].Kelvin - points[before].Kelvin) / hours;
        // A kiln that goes on as before has moved by one step when the clock was put on, and by an hour more when it was not.
        var moved = points[at].Kelvin - points[at - 1].Kelvin;
        return Math.Abs(slope) > SlopeThatTells && Math.Abs(moved - (slope * usual)) < Math.Abs(moved - (slope * (1 + usual)));
    }

    private static bool IsNight(double wall, bool dated)
    {
        if (wall % 24 > LatestHour) return false;
        if (!dated) return true;
        var day = DateOnly.FromDayNumber((int)(wall / 24));
        return day.DayOfWeek == DayOfWeek.Sunday && day.Month is 3 or 4 or 9 or 10 or 11;
    }

    private static double UsualStep(ReadOnlySpan<HeatPoint> points)
    {
        var steps = new double[Math.Min(points.Length - 1, 2001)];
        var stride = (double)(points.Length - 1) / steps.Length;
        for (var i = 0; i < steps.Length; i++)
        {
            var at = (int)(i * stride);
            steps[i] = points[at + 1].Hours - points[at].Hours;
        }

        Array.Sort(steps);
        return steps[steps.Length / 2];
    }
}
