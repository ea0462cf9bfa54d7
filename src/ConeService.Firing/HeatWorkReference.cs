using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Firing.HeatWork;
using ConeService.Firing.HeatWork.Forecasting;
using ConeService.Firing.HeatWork.Logs;

namespace ConeService.Firing;

/// <summary>What firings did to the cones, what would put a cone down, and how far a meter is off.</summary>
public sealed class HeatWorkReference
{
    private readonly HeatWorkCalculator calculator;
    private readonly HeatWorkSolver solver;
    private readonly HeatWorkComparer comparer;
    private readonly Forecaster forecaster;

    internal HeatWorkReference(HeatWorkCalculator calculator)
    {
        this.calculator = calculator;
        solver = new(calculator);
        comparer = new(calculator);
        forecaster = new(calculator);
    }

    /// <summary>Follows a programme or a log.</summary>
    /// <exception cref="RefusedException">It can't be followed; carries every finding.</exception>
    public Followed<HeatWorkAnswer> Follow(HeatWorkRequest request)
    {
        var together = new Together();
        together.Try(() => HeatWorkCheck.Require(request));
        var read = calculator.Read(request, "", together);
        together.Done();
        return Show(calculator.Answer(read, ""));
    }

    /// <summary>Begins to read a log that comes line by line.</summary>
    /// <param name="settings">How it was measured; its log and segments are not read.</param>
    /// <param name="reading">How the log is to be read, where it leaves a choice.</param>
    /// <exception cref="RefusedException">The settings can't be read; carries every finding.</exception>
    public UploadedLog Upload(HeatWorkRequest settings, LogReading reading)
    {
        var together = new Together();
        CheckReading(settings.Units, reading, together);
        var read = together.Try(() => calculator.Settings(settings, ""));
        together.Done();
        return new(calculator, read!, new CsvLogReader(settings.Units, reading), settings.Units == "F");
    }

    private static void CheckReading(string? units, LogReading reading, Together together)
    {
        if (units is not (null or "C" or "F"))
        {
            together.Findings.Add(new(
                FindingCodes.UnitsUnknown, "units", units, Message.Of("answers.unit-unknown", ("unit", units)),
                Message.Verbatim(["C", "F"]), RequestCheck.Intended(units)));
        }

        together.Try(() => LogZone.Find(reading.TimeZone));
        if (reading.DateOrder is not (null or LogReading.DayFirst or LogReading.MonthFirst))
        {
            together.Findings.Add(new(
                FindingCodes.WordUnknown, "dateOrder", reading.DateOrder,
                Message.Of("logs.date-order-unknown", ("order", reading.DateOrder)),
                Message.Verbatim([LogReading.DayFirst, LogReading.MonthFirst])));
        }
    }

    /// <summary>Which peak, hold or rate puts a cone just down.</summary>
    /// <exception cref="RefusedException">The question can't be read; carries every finding.</exception>
    public Followed<SolveAnswer> Solve(SolveRequest request)
    {
        var (answer, history) = solver.Answer(request);
        return new(answer, history is null ? null : history.ToCurve);
    }

    /// <summary>How far the meter is off, by witness cones.</summary>
    /// <exception cref="RefusedException">The question can't be read; carries every finding.</exception>
    public Followed<CompareAnswer> Compare(CompareRequest request)
    {
        var (answer, history) = comparer.Answer(request);
        return new(answer, history.ToCurve);
    }

    /// <summary>What a firing under way will do, and what would still change it.</summary>
    /// <exception cref="RefusedException">The question can't be read; carries every finding.</exception>
    public Forecast Forecast(ForecastRequest request)
    {
        var together = new Together();
        together.Try(() => ForecastCheck.Require(request));
        if (together.Any) together.Try(() => forecaster.Check(request));
        together.Done();
        return forecaster.Answer(request);
    }

    /// <summary>Begins to read the log of a firing under way that comes line by line.</summary>
    /// <param name="settings">All else that is asked; its log is not read.</param>
    /// <param name="reading">How the log is to be read, where it leaves a choice.</param>
    /// <exception cref="RefusedException">The question can't be read; carries every finding, named by parameters.</exception>
    public UploadedForecast Forecast(ForecastRequest settings, LogReading reading)
    {
        var together = new Together();
        CheckReading(settings.Units, reading, together);
        var asked = new Together();
        asked.Try(() => ForecastCheck.Require(settings with { Log = [] }));
        asked.Try(() => forecaster.Check(settings with { Log = null }));
        together.Try(() => UploadedForecast.Named(asked));
        together.Done();
        return new(forecaster, settings, new CsvLogReader(settings.Units, reading));
    }

    internal static Followed<HeatWorkAnswer> Show(HeatWorkResult result) => new(result.Answer, result.History.ToCurve);
}
