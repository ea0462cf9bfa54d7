using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Kilns;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;
using ConeService.Firing.Kilns.Thermal;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.HeatWork.Forecasting;

/// <summary>
/// A kiln that fires for the tests: the model is the truth, and the forecast sees of it only a log by the minute. It can be stopped
/// at any minute, left without power, and fired on.
/// </summary>
internal sealed class TrueFiring
{
    private const double Zero = Firings.Zero;
    private const double Minute = 1.0 / 60;
    private readonly HeatBalance balance;
    private readonly double watts;
    private readonly List<LogSample> log = [new(0, 20)];
    private double setPoint = 20 + Zero;

    public TrueFiring(KilnSetup setup, double powerFactor = 1)
    {
        var defaults = new KilnDefaults(Reference.Dataset);
        balance = new(KilnAssembler.Assemble(Reference.Dataset, defaults, setup), 20 + Zero, 20 + Zero);
        watts = setup.AvailableKilowatts * 1000 * powerFactor;
    }

    public IReadOnlyList<LogSample> Log => log;

    public double Celsius => balance.Chamber - Zero;

    /// <summary>Minutes to the end of the programme, when it ran to its end.</summary>
    public double Minutes => log[^1].Minutes!.Value;

    /// <summary>Fires until a moment or a temperature, or to the end; says what is left, as a controller would.</summary>
    public List<ProgrammeSegment> Fire(IReadOnlyList<ProgrammeSegment> programme, double untilMinutes = 1e6, double untilCelsius = 1e6)
    {
        for (var i = 0; i < programme.Count; i++)
        {
            var (rate, target, hold) = (programme[i].Rate, programme[i].Target!.Value + Zero, programme[i].HoldMinutes ?? 0);
            setPoint = balance.Chamber;
            var direction = Math.Sign(target - setPoint);
            while (Math.Abs(balance.Chamber - target) > 0.02 && direction != 0)
            {
                var next = rate is { } r ? setPoint + (direction * r * Minute) : target;
                setPoint = direction > 0 ? Math.Min(target, next) : Math.Max(target, next);
                Step(setPoint, watts);
                if (Minutes >= untilMinutes || Celsius >= untilCelsius) return [programme[i], .. programme.Skip(i + 1)];
            }

            for (; hold > 1e-9; hold--)
            {
                Step(target, watts);
                if (Minutes >= untilMinutes)
                    return [programme[i] with { HoldMinutes = hold - 1 }, .. programme.Skip(i + 1)];
            }
        }

        return [];
    }

    /// <summary>Leaves it without power.</summary>
    public void Cut(double minutes)
    {
        for (var i = 0; i < minutes; i++) Step(0, 0);
    }

    /// <summary>Leaves it without power until it is opened; the log goes on.</summary>
    public void Cool()
    {
        while (Math.Max(balance.Chamber, balance.Load) >= 95 + Zero) Step(0, 0);
    }

    /// <summary>What the whole log says of the cones, by the computation that anybody can ask.</summary>
    public HeatWorkAnswer HeatWork() => new HeatWorkReference(new HeatWorkCalculator(Reference.Charts))
        .Follow(new() { Units = "C", Log = [.. log] }).Answer;

    /// <summary>A forecast from the log as it stands.</summary>
    public ForecastAnswer Forecast(string cone, IReadOnlyList<ProgrammeSegment>? rest, Kiln? kiln, string? start = null) =>
        new HeatWorkReference(new HeatWorkCalculator(Reference.Charts)).Forecast(new()
        {
            Units = "C",
            Log = [.. log],
            Cone = SentText.Of(cone),
            Segments = rest is { Count: > 0 } ? rest : null,
            Kiln = kiln,
            Start = start,
        }).Answer;

    private void Step(double wanted, double most)
    {
        balance.Step(60, wanted, most);
        log.Add(new(log[^1].Minutes + 1, Math.Round(Celsius, 1)));
    }
}
