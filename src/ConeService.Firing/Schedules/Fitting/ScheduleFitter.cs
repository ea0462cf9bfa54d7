using System.Collections.Concurrent;
using ConeService.Contract.Answers;
using ConeService.Contract.Schedules;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>An answer with the curve it speaks of, for figures.</summary>
/// <param name="Answer">The answer.</param>
/// <param name="Curve">The firing from the start until it may be opened: of the kiln where it was modelled, else of the programme with a guessed cooling.</param>
/// <param name="Programme">What the controller asks for, without the cooling.</param>
internal sealed record FitResult(ScheduleFit Answer, HeatHistory Curve, HeatHistory Programme);

/// <summary>Fits templates to a cone, a kiln and a load. Safe for parallel use; keeps the curves of the charts it was asked for.</summary>
internal sealed class ScheduleFitter
{
    private readonly ScheduleBook book;
    private readonly KilnModel model;
    private readonly FitReader reader;
    private readonly PlanMaker maker;
    private readonly FitWriter writer;
    // A fit follows many programmes with the same curves, so that their table soon pays.
    private const int FewPieces = 40;

    private readonly ConcurrentDictionary<(string Chart, decimal Rate), ConeCurves> curves = new();

    /// <summary>Makes a fitter over a data package.</summary>
    public ScheduleFitter(ScheduleBook book, ConeCharts charts, KilnModel model)
    {
        this.book = book;
        this.model = model;
        reader = new(book, charts, model);
        maker = new(book, charts);
        writer = new(book, charts);
    }

    /// <summary>The templates.</summary>
    public ScheduleBook Book => book;

    /// <summary>Fits a template.</summary>
    /// <param name="schedule">The template.</param>
    /// <param name="request">The request; units are C or F and numbers in range.</param>
    /// <exception cref="RefusedException">Something can't be answered; carries every finding.</exception>
    public FitResult Fit(Schedule schedule, FitRequest request)
    {
        var question = reader.Read(schedule, request);
        var meter = Curves(question);
        var natural = NaturalRates.Guess(book.Default("kiln-cooling-rate"), 1000);
        // Without any cooling of our own at first: the kiln must show how fast it cools by itself.
        var plan = maker.Make(question, meter, natural with { Inversion = 0 });
        if (question.Kiln is not { } setup)
        {
            plan = maker.Make(question, meter, NaturalRates.Guess(book.Default("kiln-cooling-rate"), plan.PeakCelsius));
            CheckLimit(plan, question);
            return writer.Write(question, plan, meter, null, null);
        }

        CheckLimit(plan, question);
        // How fast the kiln cools is known only when it has been fired once; it changes little with the peak.
        natural = NaturalRates.Of(model.Predict(setup, plan.Plan), plan.Steps, natural);
        plan = maker.Make(question, meter, natural);
        var prediction = model.Predict(setup, plan.Plan);
        return writer.Write(question, plan, meter, prediction, KilnRemedies.Find(question, plan, meter, prediction, model));
    }

    private ConeCurves Curves(FitQuestion question)
    {
        var row = question.Target is null ? null : question.Schedule.Segments.FirstOrDefault(s => s.TargetCone is not null && s.TargetBelowCelsius is null);
        var asked = Math.Clamp(row?.RateCelsiusPerHour ?? question.Chart.DefaultRate!.Value.CelsiusPerHour, 5, 600);
        var nearest = question.Chart.NearestRate(asked);
        return curves.GetOrAdd(
            (question.Chart.Id, nearest), static (_, x) => new(x.Chart, x.nearest, exactPieces: FewPieces), (question.Chart, nearest));
    }

    private static void CheckLimit(FittedPlan plan, FitQuestion question)
    {
        if (question.Kiln?.MaxCelsius is not { } most || plan.PeakCelsius <= most) return;
        throw new RefusedException(new Finding(
            "kiln-below-cone", "/kiln/maxTemperature", SegmentWords.Temperature(most, question.Fahrenheit),
            question.Target is { } target
                ? $"Cone {target.Cone.Cone} needs {SegmentWords.Temperature(plan.PeakCelsius, question.Fahrenheit)} in this schedule; the kiln ends at {SegmentWords.Temperature(most, question.Fahrenheit)}."
                : $"The schedule goes to {SegmentWords.Temperature(plan.PeakCelsius, question.Fahrenheit)}; the kiln ends at {SegmentWords.Temperature(most, question.Fahrenheit)}.",
            ["a kiln that goes higher", "a cooler cone"],
            question.Fahrenheit && most < 700 ? "A limit in °C, sent with units F?" : null));
    }
}
