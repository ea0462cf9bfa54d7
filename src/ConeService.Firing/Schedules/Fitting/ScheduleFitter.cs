using System.Collections.Concurrent;
using ConeService.Contract.Answers;
using ConeService.Contract.Schedules;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;
using ConeService.Firing.Loads;
using ConeService.Firing.Schedules.Fitting.Starting;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>An answer with the curve it speaks of, for figures.</summary>
/// <param name="Answer">The answer.</param>
/// <param name="Curve">The firing from the start until it may be opened: of the kiln where it was modelled, else of the programme with a
/// guessed cooling.</param>
/// <param name="Programme">What the controller asks for, without the cooling.</param>
internal sealed record FitResult(ScheduleFit Answer, HeatHistory Curve, HeatHistory Programme);

/// <summary>Fits templates to a cone, a kiln and a load. Safe for parallel use; keeps the curves of the charts it was asked for.</summary>
internal sealed class ScheduleFitter
{
    private readonly ScheduleCatalogue catalogue;
    private readonly KilnModel model;
    private readonly FitReader reader;
    private readonly StepFitter fitter;
    private readonly FitWriter writer;
    private readonly LoadAtCone loads;
    // A fit follows many programmes with the same curves, so that their table soon pays.
    private const int FewPieces = 40;

    private readonly ConcurrentDictionary<(string Chart, decimal Rate), ConeCurves> curves = new();

    /// <summary>Makes a fitter over a data package.</summary>
    public ScheduleFitter(ScheduleCatalogue catalogue, ConeCharts charts, KilnModel model, LoadCheck loads)
    {
        this.catalogue = catalogue;
        this.model = model;
        reader = new(catalogue, charts, model);
        fitter = new(catalogue, charts);
        writer = new(catalogue, charts);
        this.loads = new(loads, charts);
    }

    /// <summary>The templates.</summary>
    public ScheduleCatalogue Catalogue => catalogue;

    /// <summary>Fits a template.</summary>
    /// <param name="schedule">The template.</param>
    /// <param name="request">The request; units are C or F and numbers in range.</param>
    /// <param name="now">Now, where the caller of this library knows it: what a start is chosen from when the request does not say.</param>
    /// <exception cref="RefusedException">Something can't be answered; carries every finding.</exception>
    public FitResult Fit(Schedule schedule, FitRequest request, DateTimeOffset? now = null)
    {
        var (question, load) = Read(schedule, request, now);
        var meter = Curves(question);
        var natural = NaturalRates.Guess(catalogue.Default("kiln-cooling-rate"), 1000);
        // Without any cooling of our own at first: the kiln must show how fast it cools by itself.
        var fitted = fitter.Fit(question, meter, natural with { Inversion = 0 });
        if (question.Kiln is not { } setup)
        {
            fitted = fitter.Fit(question, meter, NaturalRates.Guess(catalogue.Default("kiln-cooling-rate"), fitted.PeakCelsius));
            FitLimits.Check(question, fitted, null, meter);
            load = loads.AtReached(question, request, load, meter.Measure(fitted.Programme.ToHistory()));
            return Start(question, fitted, null, q => writer.Write(q, fitted, meter, null, null, load: load));
        }

        // How fast the kiln cools is known only when it has been fired once; it changes little with the peak.
        natural = NaturalRates.Of(model.Predict(setup, fitted.KilnProgramme), fitted.Steps, natural);
        var loop = new KilnLoop(model, meter);
        var closed = loop.Close(question, setup, q => fitter.Fit(q, meter, natural));
        FitLimits.Check(question, closed.Fitted, closed.Prediction, meter);
        var remedies = new KilnRemedies(question, closed, meter, loop).Find();
        load = loads.AtReached(question, request, load, closed.Work);
        var opening = question.Drawn ? null : model.OpeningSpan(setup, closed.Fitted.KilnProgramme, closed.Prediction);
        return Start(
            question, closed.Fitted, closed.Prediction,
            q => writer.Write(q, closed.Fitted, meter, closed.Prediction, remedies, opening, load));
    }

    /// <summary>Checks a request as far as it can be read.</summary>
    /// <param name="schedule">The template.</param>
    /// <param name="request">The request; units are C or F.</param>
    /// <param name="now">Now, as for a fit.</param>
    /// <exception cref="RefusedException">Something can't be answered; carries every finding.</exception>
    public void Check(Schedule schedule, FitRequest request, DateTimeOffset? now) => Read(schedule, request, now);

    private (FitQuestion Question, LoadVerdict? Load) Read(Schedule schedule, FitRequest request, DateTimeOffset? now)
    {
        var together = new Together();
        var question = together.Try(() => reader.Read(schedule, request, now));
        var load = together.Try(() => question is not null ? loads.AtTarget(question, request) : loads.Unread(schedule, request));
        together.Done();
        return (question!, load);
    }

    // How long the firing takes does not depend on when it starts, so the start is chosen last.
    private FitResult Start(FitQuestion question, FittedSteps fitted, KilnPrediction? prediction, Func<FitQuestion, FitResult> write)
    {
        if (question.Starting is not { } wish) return write(question);
        var (started, choice) = StartChooser.Choose(question, wish, fitted, prediction, model.Defaults);
        var result = write(started);
        return result with { Answer = result.Answer with { StartChosen = choice } };
    }

    private ConeCurves Curves(FitQuestion question)
    {
        var row = question.Target is null
            ? null
            : question.Schedule.Segments.FirstOrDefault(s => s.TargetCone is not null && s.TargetBelowCelsius is null);
        var asked = Math.Clamp(row?.RateCelsiusPerHour ?? question.Chart.DefaultRate!.Value.CelsiusPerHour, 5, 600);
        var nearest = question.Chart.NearestRate(asked);
        return curves.GetOrAdd(
            (question.Chart.Id, nearest), static (_, x) => new(x.Chart, x.nearest, exactPieces: FewPieces), (question.Chart, nearest));
    }
}
