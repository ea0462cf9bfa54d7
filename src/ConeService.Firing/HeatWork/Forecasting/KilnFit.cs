using ConeService.Contract.HeatWork;
using ConeService.Contract.Kilns;
using ConeService.Contract.Requests;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.HeatWork.Forecasting;

/// <summary>
/// Losses and power of the kiln as its log shows them. Where the chamber is led along the log, the power it takes is linear in the
/// leak: a fall with the power off gives the leak by linear least squares, a climb at full power the power.
/// </summary>
/// <param name="LeakBefore">Leak factor as stated or assumed.</param>
/// <param name="LeakFactor">Leak factor that explains the fall.</param>
/// <param name="PowerFactor">Power over what was stated or assumed.</param>
internal sealed record KilnFit(double LeakBefore, double LeakFactor, double PowerFactor)
{
    // Below half an hour the steps of a controller and the flicker of a meter weigh too much.
    private const double WindowHours = 0.5;
    private const double LeastHours = 1.0 / 6;

    // Short of this share of the rate asked for, the kiln is not following.
    private const double Following = 0.95;

    // The model claims ±20 %: a kiln that climbs slowly on less than this share of its power does so because it is told to.
    private const double LeastPower = 0.7;
    private const double MostPower = 1.5;
    private const double PlainPower = 0.02;
    private const double PlainLeak = 0.1;

    /// <summary>Fits them.</summary>
    /// <param name="replay">The log run through the model.</param>
    /// <param name="interruption">The fall with the power off, if any.</param>
    /// <param name="under">The segment under way; null when the kiln is off.</param>
    public static KilnFit Of(KilnReplay replay, Interruption? interruption, HeatSegment? under)
    {
        var before = replay.Setup.LeakFactor;
        var leak = interruption is null ? before : Leak(replay, interruption) ?? before;
        var until = interruption?.From.Hours ?? replay.Steps[^1].Hours;
        return new(before, leak, Power(replay, leak - before, until, interruption is null ? under : null));
    }

    private static Bounds Leaks => Bounds.Of<Kiln>(nameof(Kiln.LeakFactor));

    /// <summary>What was changed, in numbers and words.</summary>
    public KilnCalibration Told() => new(
        LeakBefore,
        Math.Round(LeakFactor, 2),
        Math.Round(PowerFactor, 3),
        LeakFactor != LeakBefore && (LeakFactor == Leaks.Low || LeakFactor == Leaks.High)
            ? Message.Sentences(Changed(), Message.Of("forecast.fitted-bound", ("low", Leaks.Low), ("high", Leaks.High)))
            : Changed());

    private Message Changed() =>
        (LeakFactor != LeakBefore, PowerFactor != 1) switch
        {
            (true, true) => Message.Of(
                "forecast.fitted-both", ("before", LeakBefore), ("leak", LeakFactor), ("power", PowerFactor * 100)),
            (true, false) => Message.Of("forecast.fitted-leak", ("before", LeakBefore), ("leak", LeakFactor)),
            (false, true) => Message.Of("forecast.fitted-power", ("power", PowerFactor * 100)),
            _ => Message.Of("forecast.fitted-nothing"),
        };

    // With the power off P + Δ·L = 0 at every step, P the power that the log would take and L the loss by one unit of leak.
    private static double? Leak(KilnReplay replay, Interruption fall)
    {
        var (products, squares, from, to) = (0.0, 0.0, double.NaN, double.NaN);
        foreach (var step in replay.Steps)
        {
            if (step.Hours <= fall.From.Hours || step.Hours > fall.Lowest.Hours + 1e-9) continue;
            if (double.IsNaN(from)) from = step.Hours;
            to = step.Hours;
            var loss = replay.LeakPerFactor * (step.Kelvin - ForecastReader.Room);
            products -= step.Watts * loss;
            squares += loss * loss;
        }

        if (!(to - from >= LeastHours) || squares <= 0) return null;
        var found = Math.Clamp(replay.Setup.LeakFactor + (products / squares), Leaks.Low, Leaks.High);
        return Math.Abs(found - replay.Setup.LeakFactor) < PlainLeak ? null : found;
    }

    private static double Power(KilnReplay replay, double moreLeak, double until, HeatSegment? under)
    {
        double Share(ReplayStep step)
        {
            var most = replay.Setup.AvailableKilowatts * 1000;
            if (replay.Setup.Heat != KilnHeat.Electric) most *= replay.Available(step.Kelvin);
            return (step.Watts + (moreLeak * replay.LeakPerFactor * (step.Kelvin - ForecastReader.Room))) / most;
        }

        // Whatever the log did for long, the kiln can do: the most that half an hour took is the least that there is.
        var (sustained, recent) = (0.0, 0.0);
        var (steps, sum, first) = (replay.Steps, 0.0, 0);
        for (var i = 0; i < steps.Count && steps[i].Hours <= until + 1e-9; i++)
        {
            sum += Share(steps[i]);
            while (steps[i].Hours - steps[first].Hours > WindowHours) sum -= Share(steps[first++]);
            recent = sum / (i - first + 1);
            if (steps[i].Hours - steps[first].Hours >= 0.9 * WindowHours) sustained = Math.Max(sustained, recent);
        }

        if (sustained > 1 + PlainPower) return Math.Min(sustained, MostPower);
        if (under is null || !Limited(steps, under) || recent < LeastPower || recent > 1 - PlainPower) return 1;
        return recent;
    }

    // The kiln climbs, and plainly more slowly than it is told to.
    private static bool Limited(IReadOnlyList<ReplayStep> steps, HeatSegment under)
    {
        var last = steps[^1];
        if (under.TargetKelvin - last.Kelvin < 2) return false;
        var first = steps.FirstOrDefault(s => s.Hours >= last.Hours - WindowHours);
        var hours = last.Hours - first.Hours;
        var rate = hours > 0 ? (last.Kelvin - first.Kelvin) / hours : 0;
        return hours >= 0.8 * WindowHours && rate > 0 && !(rate >= Following * under.RateKelvinPerHour);
    }
}
