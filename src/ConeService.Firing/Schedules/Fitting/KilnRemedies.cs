using ConeService.Contract.Cones;
using ConeService.Contract.Kilns;
using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>What helps a kiln that can't follow: each remedy was fired in the model before it is named.</summary>
internal static class KilnRemedies
{
    // Programmed a little slower than what the kiln just managed, so that something is left for the thermostat.
    private const double Reserve = 0.9;
    private const double SlowestRamp = 5;

    /// <summary>The remedies, the simplest first; empty when the kiln follows.</summary>
    public static IReadOnlyList<FitRemedy> Find(FitQuestion question, FittedPlan plan, ConeCurves meter, KilnPrediction prediction, KilnModel model)
    {
        var remedies = new List<FitRemedy>();
        if (prediction.Segments.Any(s => s.Following is Following.TooSlow or Following.Stalls))
        {
            Slower(remedies, question, plan, meter, prediction, model);
            Power(remedies, question, plan, meter, model);
        }

        if (!prediction.Completed && CoolerCone(meter, prediction) is { } cooler)
        {
            remedies.Add(new("cooler-cone", $"As it stands, the kiln reaches cone {cooler}: fire ware that matures there, or a lighter load.", null, $"cone {cooler}"));
        }

        foreach (var (step, outcome) in plan.Steps.Zip(prediction.Segments).Where(x => x.Second.Following == Following.CoolsSlower))
        {
            remedies.Add(new("slower-cooling", FormattableString.Invariant(
                $"Segment {outcome.Index + 1} asks for {SegmentWords.Rate(step.Speed, question.Fahrenheit)} down; closed, this kiln cools at about {SegmentWords.Rate(outcome.MeanRateCelsiusPerHour ?? 0, question.Fahrenheit)} there. Nothing needs doing unless the glaze wants the faster cooling."), null, null));
        }

        return remedies;
    }

    private static void Slower(List<FitRemedy> remedies, FitQuestion question, FittedPlan plan, ConeCurves meter, KilnPrediction prediction, KilnModel model)
    {
        if (prediction.Segments.Any(s => s.Following == Following.Stalls)) return;
        var grid = new ControllerGrid(question.Fahrenheit);
        var steps = plan.Steps.Zip(prediction.Segments).Select(x => x.Second is { Following: Following.TooSlow, LastRateCelsiusPerHour: { } rate } && x.First.Rate is { } asked
            ? x.First with { Rate = grid.RateBelow(Math.Clamp(rate * Reserve, SlowestRamp, asked)), RateLimited = true } : x.First).ToList();
        var again = PlanMaker.Again(plan, steps, question, meter);
        var second = model.Predict(question.Kiln!, again.Plan);
        var reading = FitReadings.Say(meter.Measure(second.Chamber));
        var names = string.Join(", ", plan.Steps.Zip(again.Steps).Select((x, i) => (x.First, x.Second, i)).Where(x => x.First.Speed != x.Second.Speed)
            .Select(x => $"segment {x.i + 1} at {SegmentWords.Rate(x.Second.Speed, question.Fahrenheit)}"));
        var follows = second.Segments.All(s => s.Following is not (Following.TooSlow or Following.Stalls));
        remedies.Add(new("slower-ramps", FormattableString.Invariant(
            $"Programme {names}, with a peak of {SegmentWords.Temperature(again.PeakCelsius, question.Fahrenheit)}: {(follows ? "the kiln then follows" : "the kiln is then nearer, but still behind")}, and the cones read {reading} after {SegmentWords.Duration(second.HoursToPeak * 60)} to the peak."),
            FitWriter.Programme(again, question), reading));
    }

    private static void Power(List<FitRemedy> remedies, FitQuestion question, FittedPlan plan, ConeCurves meter, KilnModel model)
    {
        var setup = question.Kiln!;
        if (setup.Heat == KilnHeat.Electric && setup.ElementAgeing > 1.005) Try("new-elements", setup with { AvailableKilowatts = setup.AvailableKilowatts * setup.ElementAgeing, ElementAgeing = 1 }, "New elements would give");
        var full = setup.RatedKilowatts / setup.ElementAgeing;
        if (setup.Heat == KilnHeat.Electric && setup.AvailableKilowatts < 0.97 * full) Try("full-voltage", setup with { AvailableKilowatts = full }, "The elements get less than the voltage they were made for. At that voltage, which is work for a licensed electrician, they would give");

        void Try(string code, KilnSetup changed, string says)
        {
            var prediction = model.Predict(changed, plan.Plan);
            var follows = prediction.Segments.All(s => s.Following is not (Following.TooSlow or Following.Stalls));
            var reading = FitReadings.Say(meter.Measure(prediction.Chamber));
            remedies.Add(new(code, FormattableString.Invariant(
                $"{says} {changed.AvailableKilowatts:0.0} kW instead of {setup.AvailableKilowatts:0.0}: {(follows ? "the kiln then follows" : "not enough by itself")}, and the cones read {reading}."), null, reading));
        }
    }

    private static Cone? CoolerCone(ConeCurves meter, KilnPrediction prediction) => meter.Measure(prediction.Chamber).Reached?.Cone.Cone;
}
