using ConeService.Contract.Texts;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>A programme with what the kiln makes of it.</summary>
/// <param name="Fitted">The programme; its <see cref="FittedSteps.WhyNot"/> speaks of the kiln's curve.</param>
/// <param name="Prediction">What the kiln does.</param>
/// <param name="Work">What that does to the cones.</param>
internal sealed record ClosedFit(FittedSteps Fitted, KilnPrediction Prediction, ScaleWork Work);

/// <summary>
/// Solves a programme on the kiln's own curve: the programme is fired in the model, and given more or less of the cone's progress until
/// the chamber, and not only the set-point, puts the cone where it shall point.
/// </summary>
/// <param name="model">The kiln model.</param>
/// <param name="meter">The chart's curves.</param>
internal sealed class KilnLoop(KilnModel model, ConeCurves meter)
{
    /// <summary>How far from the goal the predicted cone may end.</summary>
    public const double Tolerance = 0.05;

    // Near enough: a degree of the controller is about this much. A cone that is just down is aimed at, never one that is nearly so.
    private const double Near = 0.03;
    private const double Margin = 0.01;
    private const int Rounds = 5;

    /// <summary>Solves.</summary>
    /// <param name="question">The question.</param>
    /// <param name="setup">The kiln.</param>
    /// <param name="fit">Makes the programme of a question whose target has an aim.</param>
    public ClosedFit Close(FitQuestion question, KilnSetup setup, Func<FitQuestion, FittedSteps> fit)
    {
        var (best, asked) = (Fire(setup, fit(question)), question);
        if (question.Drawn) return Drawn(best);
        if (question.Target is not { } target) return best;
        for (var round = 0; round < Rounds && best.Prediction.Completed && !Meets(best, target); round++)
        {
            Patience.Check();
            var (aim, progress) = (asked.Target!.Aim, Last(best, target));
            if (progress <= 0) break;
            asked = question with { Target = target with { Aim = aim * Math.Clamp((target.Progress + Margin) / progress, 0.5, 2) } };
            var next = Fire(setup, fit(asked));
            if (Miss(next, target) >= Miss(best, target)) break;
            best = next;
        }

        return best with { Fitted = best.Fitted with { WhyNot = WhyNot(best, question, target) } };
    }

    // The ware leaves the kiln at the end of the programme; what the empty kiln does then is no firing.
    private ClosedFit Drawn(ClosedFit fit)
    {
        var points = fit.Prediction.Chamber.Points.ToArray().TakeWhile(p => p.Hours <= fit.Prediction.HoursToEnd + 1e-9).ToArray();
        var drawn = fit.Prediction with { Chamber = new(points), HoursToOpening = null };
        return fit with { Prediction = drawn, Work = meter.Measure(drawn.Chamber) };
    }

    private ClosedFit Fire(KilnSetup setup, FittedSteps fitted)
    {
        var prediction = model.Predict(setup, fitted.KilnProgramme);
        return new(fitted, prediction, meter.Measure(prediction.Chamber));
    }

    private static bool Meets(ClosedFit fit, FitTarget target) =>
        Last(fit, target) - target.Progress is >= -1e-9 and <= Near && Next(fit, target) < 1;

    // A cone that is not down is worth half a cone.
    private static double Miss(ClosedFit fit, FitTarget target)
    {
        var miss = Last(fit, target) - target.Progress;
        return Math.Abs(miss) + (miss < -1e-9 ? Tolerance : 0) + (Next(fit, target) >= 1 ? 0.5 : 0);
    }

    private static double Last(ClosedFit fit, FitTarget target) =>
        fit.Work.Cones.FirstOrDefault(c => c.Cone.Cone == target.Cone.Cone)?.Progress ?? 0;

    private static double Next(ClosedFit fit, FitTarget target) =>
        target.Next is { } next ? fit.Work.Cones.FirstOrDefault(c => c.Cone.Cone == next.Cone)?.Progress ?? 0 : 0;

    private static Message? WhyNot(ClosedFit fit, FitQuestion question, FitTarget target)
    {
        var (progress, next) = (Last(fit, target), Next(fit, target));
        if (Math.Abs(progress - target.Progress) <= Tolerance && next < 1) return null;
        if (fit.Fitted.WhyNot is { } own) return own;
        return next >= 1 && progress >= target.Progress
            ? Message.Of(
                "schedules.next-cone-falls-too",
                ("next", target.Next!.Cone.ToString()), ("progress", next), ("chart", question.Chart.Id),
                ("cone", target.Cone.Cone.ToString()))
            : Message.Of(
                "schedules.kiln-misses-cone",
                ("cone", target.Cone.Cone.ToString()), ("progress", progress), ("goal", target.Progress),
                ("reading", FitReadings.Say(fit.Work)));
    }
}
