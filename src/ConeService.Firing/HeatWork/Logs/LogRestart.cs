using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>
/// Joins the runs of a logger that was restarted and counted its time from the beginning again. How long it was off is not in the log:
/// where that decides the answer, it is asked back.
/// </summary>
internal static class LogRestart
{
    private const int LeastRun = 5;
    private const int MostRuns = 20;
    private const double SameKelvin = 25;
    private const double NearTop = 150;

    // Any plausible rate will do where no cone notices.
    private const double UsualKelvinPerHour = 300;

    /// <summary>Joins the runs in place.</summary>
    /// <param name="points">The samples in the order of the log, hours since the first.</param>
    /// <param name="fieldOf">Names a sample.</param>
    /// <param name="warnings">What was joined is told here.</param>
    /// <exception cref="RefusedException">The time between two runs decides the answer.</exception>
    public static void Join(Span<HeatPoint> points, Func<int, string> fieldOf, List<HeatWarning> warnings)
    {
        var starts = Starts(points, out var usual);
        if (starts.Count < 2) return;
        var peak = Peak(points);
        var times = new List<double>();
        for (var k = 1; k < starts.Count; k++)
        {
            var (at, end) = (starts[k], k + 1 < starts.Count ? starts[k + 1] : points.Length);
            var (last, next) = (points[at - 1], points[at]);
            var moved = Math.Abs(next.Kelvin - last.Kelvin);
            var isTwoFirings = Peak(points[..at]) > peak - NearTop && Peak(points[at..end]) > peak - NearTop && moved > SameKelvin;
            if (isTwoFirings || (moved > SameKelvin && Math.Max(last.Kelvin, next.Kelvin) > peak - NearTop))
            {
                throw new RefusedException(new Finding(
                    FindingCodes.LogRestarted, fieldOf(at), null,
                    Message.Of("logs.restart-unknown", ("from", Celsius(last)), ("to", Celsius(next)), ("minute", last.Hours * 60)),
                    [Message.Of("logs.times-that-rise"), Message.Of("logs.timestamps-allowed")],
                    Message.Of("logs.two-firings")));
            }

            var shift = last.Hours + usual + (moved > SameKelvin ? moved / UsualKelvinPerHour : 0) - next.Hours;
            for (var i = at; i < end; i++) points[i] = points[i] with { Hours = points[i].Hours + shift };
            times.Add(points[at].Hours);
        }

        warnings.Add(HeatWarning.At(
            WarningCodes.LogRestarted, Message.Of("logs.restarted", ("count", times.Count), ("minute", times[0] * 60)), times));
    }

    // Where the time begins again, with the first run; no more than one run when the log goes back otherwise.
    private static List<int> Starts(ReadOnlySpan<HeatPoint> points, out double usual)
    {
        var starts = new List<int> { 0 };
        usual = points.Length > LeastRun ? (points[LeastRun].Hours - points[0].Hours) / LeastRun : 0;
        for (var i = 1; i < points.Length; i++)
        {
            if (points[i].Hours >= points[i - 1].Hours) continue;
            var begins = points[i].Hours <= points[0].Hours + (2 * usual) && i - starts[^1] >= LeastRun && points.Length - i >= LeastRun;
            if (!begins || starts.Count == MostRuns) return [0];
            starts.Add(i);
        }

        return starts;
    }

    private static double Peak(ReadOnlySpan<HeatPoint> points)
    {
        var peak = 0.0;
        foreach (var point in points)
        {
            if (!ExcursionFilter.IsAtAnEnd(point.Kelvin)) peak = Math.Max(peak, point.Kelvin);
        }

        return peak;
    }

    private static double Celsius(HeatPoint point) => point.Kelvin - Temperature.KelvinAtZero;
}
