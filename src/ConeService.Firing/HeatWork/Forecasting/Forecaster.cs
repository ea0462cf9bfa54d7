using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork.Logs;
using ConeService.Firing.Kilns;
using ConeService.Firing.Schedules.Fitting;

namespace ConeService.Firing.HeatWork.Forecasting;

/// <summary>Answers what a firing under way will do. Safe for parallel use.</summary>
/// <param name="calculator">Follows firings.</param>
internal sealed class Forecaster(HeatWorkCalculator calculator)
{
    private const double Zero = Temperature.KelvinAtZero;

    // A kiln that has cooled below the inversion of quartz begins a firing anew.
    private const double StartOverKelvin = 500 + Zero;

    // Half a cone of the closer kind: a target that ends further past its end point is worth a change.
    private const double FarPastKelvin = 6;
    private const double JustDownKelvin = -1;

    private readonly KilnModel model = new(calculator.Charts.Dataset);
    private readonly ForecastReader reader = new(calculator, new(calculator.Charts.Dataset));

    /// <summary>Answers a request whose form was checked.</summary>
    /// <param name="request">The question.</param>
    /// <param name="read">Its log, where that came by itself; null: that of the request.</param>
    /// <exception cref="Contract.Answers.RefusedException">Something can't be answered; carries every finding.</exception>
    public Forecast Answer(ForecastRequest request, CleanLog? read = null)
    {
        var question = reader.Read(request, read);
        var log = question.Log.History;
        var interruption = Interruption.Find(log, question.Rest);
        var replay = question.Kiln is { } setup
            ? new KilnReplay(calculator.Charts.Dataset, model.Defaults, setup, log)
            : null;
        var fit = replay is null ? null : KilnFit.Of(replay, interruption, question.Rest?[0]);
        IFiresAhead ahead = replay is null
            ? new ProgrammeAhead(question.Now.Kelvin, question.FullSpeedKelvinPerHour, question.Cooling)
            : new KilnAhead(replay, fit!);
        var fired = ahead.Fire(question.Rest ?? []);
        var whole = Joined(log, fired.History);
        var warnings = question.Log.Warnings.Concat(Warnings(question, replay, fired)).ToList();
        var result = calculator.Answer(
            whole, new(question.Log.Samples, question.Log.Used, null, null, []), warnings, question.Settings);
        var curve = calculator.Curves(question.Settings.Chart, HistoryShape.RateOverLast100(whole)).Find(question.Cone.Cone)!;
        var done = HeatIntegral.Progress(curve, log);
        var target = result.Answer.Cones.First(c => c.Cone == question.Cone.Cone.ToString());
        var spans = Spans.Of(question, replay, fit, fired, ahead => HeatIntegral.Progress(curve, Joined(log, ahead.History)));
        var (verdict, options) = Advise(question, ahead, curve, done, target, interruption is not null, fired);
        return new ForecastWriter(calculator.Charts.Dataset, question).Write(
            result.Answer, target, fired, spans, interruption, fit, verdict, options, done);
    }

    /// <summary>Checks a request as far as it can be read, whatever is wrong with its form.</summary>
    /// <exception cref="Contract.Answers.RefusedException">Something can't be answered; carries every finding.</exception>
    public void Check(ForecastRequest request) => reader.Check(request);

    /// <summary>The log, and after it what is foreseen.</summary>
    private static HeatHistory Joined(HeatHistory log, HeatHistory? ahead)
    {
        if (ahead is null) return log;
        var before = log.Points;
        var after = ahead.Points[1..];
        var points = new HeatPoint[before.Length + after.Length];
        before.CopyTo(points);
        for (var i = 0; i < after.Length; i++)
            points[before.Length + i] = after[i] with { Hours = log.End.Hours + after[i].Hours };
        return new(points);
    }

    private static (ForecastVerdict, IReadOnlyList<Advised>) Advise(
        ForecastQuestion question, IFiresAhead ahead, BendingCurve curve, double done, ConeResult target, bool interrupted,
        FiringAhead fired)
    {
        if (done >= HeatIntegral.Down) return (ForecastVerdict.Done, []);
        if (!interrupted && question.Rest is not null && fired.Finishes
            && target.MarginCelsiusDifference is >= JustDownKelvin and <= FarPastKelvin)
        {
            return (ForecastVerdict.AsProgrammed, []);
        }

        var grid = new ControllerGrid(question.Fahrenheit);
        var plan = RestartPlan.Of(question.Now.Kelvin, question.Rest, interrupted, curve, grid);
        var adviser = new ForecastAdviser(curve, done, ahead, grid);
        var highest = (question.Kiln?.MaxCelsius ?? ScaleTable.HottestCelsius) + Zero;
        Advised?[] found = [adviser.Hold(plan), adviser.Peak(plan, question.Now.Kelvin, highest)];
        IReadOnlyList<Advised> options = [.. found.OfType<Advised>()];
        var verdict = (options.Count, interrupted) switch
        {
            (0, _) => ForecastVerdict.OutOfReach,
            (_, true) => question.Now.Kelvin < StartOverKelvin ? ForecastVerdict.StartOver : ForecastVerdict.Resume,
            _ => target.MarginCelsiusDifference < 0 ? ForecastVerdict.MoreHeat : ForecastVerdict.LessHeat,
        };
        return (verdict, options);
    }

    private static IEnumerable<HeatWarning> Warnings(ForecastQuestion question, KilnReplay? replay, FiringAhead fired)
    {
        var f = question.Fahrenheit;
        if (replay?.BeganHot == true)
        {
            yield return HeatWarning.Of(WarningCodes.LogBeginsHot, Message.Of(
                "forecast.log-begins-hot", ("start", QuantityFormat.Temperature(question.Log.History.Start.Kelvin - Zero, f))));
        }

        if (!fired.Finishes)
        {
            var last = fired.Segments![^1];
            yield return HeatWarning.Of(WarningCodes.KilnStalls, Message.Of(
                "forecast.kiln-stalls", ("segment", last.Index + 1), ("reached", QuantityFormat.Temperature(last.EndCelsius, f))));
        }

        if (question.Kiln?.MaxCelsius is { } most && question.Rest?.Any(s => s.TargetKelvin - Zero > most + 0.5) == true)
        {
            yield return HeatWarning.Of(WarningCodes.KilnBeyondLimit, Message.Of(
                "forecast.kiln-beyond-limit", ("most", QuantityFormat.Temperature(most, f))));
        }
    }
}
