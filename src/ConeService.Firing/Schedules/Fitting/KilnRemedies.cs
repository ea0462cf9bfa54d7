using ConeService.Contract.Kilns;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>What helps a kiln that can't follow: each remedy was fired in the model before it is named.</summary>
internal sealed class KilnRemedies(FitQuestion question, ClosedFit closed, ConeCurves meter, KilnLoop loop)
{
    // Programmed a little slower than what the kiln just managed, so that something is left for the thermostat.
    private const double Reserve = 0.9;
    private const double SlowestRamp = 5;

    // Below where it stalls, so that it arrives.
    private const double BelowStall = 15;
    private const double BelowPeak = 10;

    // Charts state the rate over the last 100 °C.
    private const double LastRamp = 100;
    private const double LongestHoldMinutes = 12 * 60;
    private const double HalfLoad = 0.5;
    private const double ShortestSplit = 40;

    // Less than these are within what a meter shows.
    private const double NoticeableAgeing = 1.005;
    private const double FullPower = 0.97;

    private readonly FittedSteps fitted = closed.Fitted;
    private readonly KilnPrediction prediction = closed.Prediction;
    private readonly KilnSetup setup = question.Kiln!;
    private readonly ControllerGrid grid = new(question.Fahrenheit);
    private readonly List<FitRemedy> remedies = [];

    /// <summary>The remedies, the simplest first; empty when the kiln follows.</summary>
    public IReadOnlyList<FitRemedy> Find()
    {
        var stalls = prediction.Segments.Any(s => s.Following == Following.Stalls);
        if (stalls || prediction.Segments.Any(s => s.Following == Following.TooSlow))
        {
            if (stalls)
            {
                LowerPeak();
            }
            else
            {
                Slower();
                SlowerEnd();
                LongerHold();
            }

            Lighter();
            Power();
        }

        if (!prediction.Completed && closed.Work.Reached is { } cooler)
        {
            var cone = cooler.Cone.Cone.ToString();
            var message = Message.Of("schedules.remedy-cooler-cone", ("cone", cone));
            remedies.Add(new("cooler-cone", message, null, Message.Of("schedules.cone-named", ("cone", cone))));
        }

        foreach (var (step, outcome) in fitted.Steps.Zip(prediction.Segments).Where(x => x.Second.Following == Following.CoolsSlower))
        {
            var message = Message.Of(
                "schedules.remedy-slower-cooling",
                ("segment", outcome.Index + 1),
                ("rate", QuantityFormat.Rate(step.Speed, question.Fahrenheit)),
                ("natural", QuantityFormat.Rate(outcome.MeanRateCelsiusPerHour ?? 0, question.Fahrenheit)));
            remedies.Add(new("slower-cooling", message, null, null));
        }

        return remedies;
    }

    // Only the part of a ramp in which the kiln lags is slowed, where the controller has a segment left for it.
    private void Slower()
    {
        var room = (question.ControllerSegments ?? int.MaxValue) - fitted.Steps.Count;
        var steps = new List<FitStep>();
        for (var i = 0; i < fitted.Steps.Count; i++)
        {
            var (step, outcome) = (fitted.Steps[i], prediction.Segments[i]);
            var slow = Slowed(step, outcome);
            var from = FitProgrammes.StartOf(fitted.Steps, i, fitted.StartCelsius);
            var at = outcome.FollowsToCelsius is { } lags ? grid.RoundBelow(lags) : from;
            if (slow.Speed < step.Speed && room > 0 && at - from >= ShortestSplit && step.Celsius - at >= ShortestSplit)
            {
                steps.Add(step with { Celsius = at, Target = StepTarget.Fixed, Below = 0, HoldMinutes = 0, RateLimited = true });
                room--;
            }

            steps.Add(slow);
        }

        var again = loop.Close(question, setup, q => StepFitter.Refit(fitted, steps, q, meter));
        var slowed = again.Fitted.Steps.Select((step, i) => (step, i)).Where(x => x.step.RateLimited && x.step.Rate is not null)
            .Where(x => !fitted.Steps.Any(s => s.Celsius == x.step.Celsius && s.Speed == x.step.Speed))
            .Select(x => Message.Of(
                "schedules.segment-at-rate",
                ("segment", x.i + 1), ("rate", QuantityFormat.Rate(x.step.Speed, question.Fahrenheit))));
        Add("slower-ramps", again, Message.Of(
            "schedules.remedy-slower-ramps",
            ("segments", slowed.ToArray()),
            ("peak", QuantityFormat.Temperature(again.Fitted.PeakCelsius, question.Fahrenheit)),
            ("follows", Follows(again.Prediction)),
            ("reading", FitReadings.Say(again.Work)),
            ("time", QuantityFormat.Duration(again.Prediction.HoursToPeak * 60))));
    }

    // Only the ramp that charts are read by is slowed: the kiln may lag before it, and is there when it counts.
    private void SlowerEnd()
    {
        var steps = fitted.Steps.ToList();
        var index = steps.FindIndex(s => s.Target == StepTarget.Peak);
        if (index < 0 || (question.ControllerSegments ?? int.MaxValue) <= steps.Count) return;
        var (slow, from) = (Slowed(steps[index], prediction.Segments[index]), FitProgrammes.StartOf(steps, index, fitted.StartCelsius));
        var at = grid.RoundBelow(steps[index].Celsius - LastRamp);
        // Where the last ramp is no longer than that, it is slowed as a whole already.
        if (slow.Speed >= steps[index].Speed || at - from < ShortestSplit) return;
        var before = steps[index] with { Celsius = at, Target = StepTarget.Fixed, Below = 0, HoldMinutes = 0 };
        List<FitStep> split = [.. steps.Take(index), before, slow, .. steps.Skip(index + 1)];
        var again = loop.Close(question, setup, q => StepFitter.Refit(fitted, split, q, meter));
        Add("slower-end", again, Message.Of(
            "schedules.remedy-slower-end",
            ("from", QuantityFormat.Temperature(at, question.Fahrenheit)),
            ("rate", QuantityFormat.Rate(slow.Speed, question.Fahrenheit)),
            ("peak", QuantityFormat.Temperature(again.Fitted.PeakCelsius, question.Fahrenheit)),
            ("reading", FitReadings.Say(again.Work)),
            ("time", QuantityFormat.Duration(again.Prediction.HoursToEnd * 60)),
            ("energy", again.Prediction.Energy.TotalKilowattHours)));
    }

    private FitStep Slowed(FitStep step, SegmentRun outcome) =>
        outcome is { Following: Following.TooSlow, LastRateCelsiusPerHour: { } rate } && step.Rate is { } asked
            ? step with { Rate = grid.RateBelow(Math.Clamp(rate * Reserve, SlowestRamp, asked)), RateLimited = true }
            : step;

    // A kiln that stalls holds below its stall for as long as the cone then needs.
    private void LowerPeak()
    {
        if (prediction.Segments.FirstOrDefault(s => s.Following == Following.Stalls) is not { } stall
            || stall.Index != PeakIndex || Held(grid.RoundBelow(stall.EndCelsius - BelowStall)) is not { } held)
            return;
        Add("lower-peak", held, Message.Of("schedules.remedy-lower-peak", OfHold(held)));
    }

    // A kiln that lags comes to a peak a little lower sooner, and the hold does the rest.
    private void LongerHold()
    {
        if (PeakIndex < 0) return;
        if (Held(grid.RoundBelow(Math.Min(prediction.PeakCelsius, fitted.PeakCelsius) - BelowPeak)) is not { } held) return;
        // A hold of a kiln that is there already is no longer hold.
        if (held.Fitted.Steps[PeakIndex].HoldMinutes > fitted.Steps[PeakIndex].HoldMinutes)
            Add("longer-hold", held, Message.Of("schedules.remedy-longer-hold", OfHold(held)));
    }

    private int PeakIndex => fitted.Steps.ToList().FindIndex(s => s.Target == StepTarget.Peak);

    private (string Name, object? Value)[] OfHold(ClosedFit held) =>
    [
        ("peak", QuantityFormat.Temperature(held.Fitted.Steps[PeakIndex].Celsius, question.Fahrenheit)),
        ("hold", QuantityFormat.Duration(held.Fitted.Steps[PeakIndex].HoldMinutes)),
        ("reading", FitReadings.Say(held.Work)),
        ("time", QuantityFormat.Duration(held.Prediction.HoursToEnd * 60)),
        ("energy", held.Prediction.Energy.TotalKilowattHours),
    ];

    // The programme with its peak at a temperature, held until the cone is down in the kiln; null where no hold does it.
    private ClosedFit? Held(double celsius)
    {
        var index = PeakIndex;
        if (question.Target is not { } target || index < 0 || celsius <= FitProgrammes.StartOf(fitted.Steps, index, fitted.StartCelsius))
            return null;
        var (steps, curve) = (FitProgrammes.AtPeak(fitted.Steps, celsius, grid), meter[target.Cone]);
        var perMinute = curve.BendRate(celsius + Temperature.KelvinAtZero) / 60;
        var hold = 0.0;
        ClosedFit? held = null;
        for (var round = 0; round < 2; round++)
        {
            Patience.Check();
            var minutes = hold;
            held = loop.Close(question with { Target = null }, setup, _ => fitted with
            {
                Steps = [.. steps.Select((s, i) => i == index ? s with { HoldMinutes = minutes } : s)],
            });
            var progress = HeatIntegral.Progress(curve, held.Prediction.Chamber);
            hold = Math.Max(0, hold + Math.Ceiling((target.Progress - progress) / perMinute / 5) * 5);
            if (hold > LongestHoldMinutes) return null;
            if (round == 1 && Math.Abs(progress - target.Progress) > KilnLoop.Tolerance) return null;
        }

        return held;
    }

    private void Lighter()
    {
        var light = setup with
        {
            KilogramsWare = setup.KilogramsWare * HalfLoad,
            KilogramsFurniture = setup.KilogramsFurniture * HalfLoad,
            KilogramsWater = setup.KilogramsWater * HalfLoad,
        };
        var again = loop.Close(question, light, q => StepFitter.Refit(fitted, fitted.Steps, q, meter));
        Add("lighter-load", again, Message.Of(
            "schedules.remedy-lighter-load",
            ("ware", light.KilogramsWare),
            ("furniture", light.KilogramsFurniture),
            ("follows", Follows(again.Prediction)),
            ("reading", FitReadings.Say(again.Work)),
            ("time", QuantityFormat.Duration(again.Prediction.HoursToEnd * 60)),
            ("energy", again.Prediction.Energy.TotalKilowattHours)));
    }

    private void Power()
    {
        if (setup.Heat != KilnHeat.Electric) return;
        if (setup.ElementAgeing > NoticeableAgeing)
        {
            Try("new-elements", setup with
            {
                AvailableKilowatts = setup.AvailableKilowatts * setup.ElementAgeing,
                ElementAgeing = 1,
            });
        }

        var full = setup.RatedKilowatts / setup.ElementAgeing;
        if (setup.AvailableKilowatts < FullPower * full) Try("full-voltage", setup with { AvailableKilowatts = full });
    }

    private void Try(string code, KilnSetup changed)
    {
        var again = loop.Close(question, changed, q => StepFitter.Refit(fitted, fitted.Steps, q, meter));
        (string, object?)[] values =
        [
            ("kilowatts", changed.AvailableKilowatts),
            ("now", setup.AvailableKilowatts),
            ("follows", Follows(again.Prediction)),
            ("reading", FitReadings.Say(again.Work)),
        ];
        Add(code, again, code == "new-elements"
            ? Message.Of("schedules.remedy-new-elements", values)
            : Message.Of("schedules.remedy-full-voltage", values));
    }

    private void Add(string code, ClosedFit fit, Message message) => remedies.Add(new(
        code, message, FitWriter.Programme(fit.Fitted, question), FitReadings.Say(fit.Work),
        Follows(fit.Prediction) == "yes",
        FitMinutes.Of(fit.Prediction.HoursToEnd),
        Math.Round(fit.Prediction.Energy.TotalKilowattHours, 2)));

    private static string Follows(KilnPrediction prediction) =>
        prediction.Segments.All(s => s.Following is Following.Follows or Following.CoolsSlower) ? "yes" : "no";
}
