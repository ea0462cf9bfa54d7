using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>
/// Heating ramps that follow the thickness of the wall: slowed down where a band asks for it, divided where only part of a ramp does.
/// </summary>
internal static class ThicknessSteps
{
    // A piece shorter than this, or a rate this near to its neighbour's, is not worth a segment of its own.
    private const double ShortPiece = 40;
    private const double NearRate = 0.85;

    /// <summary>Slows the steps; never makes one faster than the template has it.</summary>
    public static void Apply(
        List<FitStep> steps, FitQuestion question, ScheduleCatalogue catalogue, double startCelsius, List<FitChange> changes)
    {
        // Up to the wall that a template was made for, its own rates are the advice.
        if (question.ThicknessMillimetres is not { } thickness || thickness <= (double?)question.Schedule.Row.ThicknessMaxMillimetres)
            return;
        var limits = WallLimits.Heating(catalogue, thickness, question.Greenware);
        var from = startCelsius;
        for (var i = 0; i < steps.Count && steps[i].Celsius >= from; i++)
        {
            var step = steps[i];
            var pieces = Pieces(from, step.Celsius, step.Speed, limits);
            from = step.Celsius;
            if (pieces.All(p => p.Rate >= step.Speed - 1e-9)) continue;
            changes.Add(Change(step, pieces, thickness, question));
            steps.RemoveAt(i);
            steps.InsertRange(i, pieces.Select((p, n) => n == pieces.Count - 1
                ? step with { Rate = Limited(step, p.Rate), RateLimited = step.RateLimited || p.Rate < step.Speed }
                : step with
                {
                    Rate = Limited(step, p.Rate),
                    RateLimited = true,
                    Celsius = p.To,
                    HoldMinutes = 0,
                    Target = StepTarget.Fixed,
                    Below = 0,
                    Stage = p.Stage ?? step.Stage,
                }));
            i += pieces.Count - 1;
        }

        Tidy(steps);
    }

    // Two slowed ramps in a row, no hold between them, at nearly one rate: one segment at the slower rate.
    private static void Tidy(List<FitStep> steps)
    {
        for (var i = 1; i < steps.Count; i++)
        {
            var (a, b) = (steps[i - 1], steps[i]);
            if (!a.RateLimited || !b.RateLimited || a.HoldMinutes > 0 || a.Target != StepTarget.Fixed || b.Target != StepTarget.Fixed)
                continue;
            if (b.Celsius < a.Celsius || a.Atmosphere != b.Atmosphere || a.Vent != b.Vent) continue;
            if (Math.Min(a.Speed, b.Speed) < NearRate * Math.Max(a.Speed, b.Speed)) continue;
            steps[i - 1] = b with
            {
                Rate = Math.Min(a.Speed, b.Speed),
                From = [.. a.From.Union(b.From)],
                Stage = a.Stage,
                Purpose = a.From.SequenceEqual(b.From)
                    ? b.Purpose
                    : Message.Of("schedules.joined-purposes", ("first", a.Purpose), ("second", b.Purpose)),
            };
            steps.RemoveAt(i--);
        }
    }

    private static double? Limited(FitStep step, double rate) => rate < step.Speed ? rate : step.Rate;

    private sealed record Piece(double From, double To, double Rate, FiringStage? Stage);

    private static List<Piece> Pieces(double from, double to, double speed, List<WallLimit> limits)
    {
        double[] cuts = [from, .. limits.SelectMany(l => new[] { l.From, l.To }).Where(t => t > from && t < to).Distinct().Order(), to];
        var pieces = cuts.Zip(cuts.Skip(1)).Select(c =>
        {
            var tightest = limits.Where(l => l.From < c.Second && l.To > c.First).MinBy(l => l.Rate);
            return tightest is not null && tightest.Rate < speed
                ? new Piece(c.First, c.Second, tightest.Rate, Stage(tightest.Band))
                : new Piece(c.First, c.Second, speed, null);
        }).ToList();
        while (pieces.Count > 1 && Joinable(pieces) is { } at)
        {
            var (a, b) = (pieces[at], pieces[at + 1]);
            pieces.RemoveAt(at + 1);
            pieces[at] = new(a.From, b.To, Math.Min(a.Rate, b.Rate), a.Rate <= b.Rate ? a.Stage : b.Stage);
        }

        return pieces;
    }

    private static int? Joinable(List<Piece> pieces)
    {
        for (var i = 0; i + 1 < pieces.Count; i++)
        {
            var (a, b) = (pieces[i], pieces[i + 1]);
            var alike = Math.Min(a.Rate, b.Rate) >= NearRate * Math.Max(a.Rate, b.Rate);
            if (alike || a.To - a.From < ShortPiece || b.To - b.From < ShortPiece) return i;
        }

        return null;
    }

    private static FiringStage Stage(WaterBand band) => band switch
    {
        WaterBand.Drying => FiringStage.Drying,
        WaterBand.Steam => FiringStage.Steam,
        WaterBand.BoundWater => FiringStage.BoundWater,
        _ => FiringStage.BurnOut,
    };

    private static FitChange Change(FitStep step, List<Piece> pieces, double thickness, FitQuestion question)
    {
        var grid = new ControllerGrid(question.Fahrenheit);
        var slow = pieces.Where(p => p.Rate < step.Speed).ToList();
        var rates = slow.Select(p => Message.Of(
            "schedules.rate-up-to",
            ("rate", QuantityFormat.Rate(grid.RateBelow(p.Rate), question.Fahrenheit)),
            ("target", QuantityFormat.Temperature(p.To, question.Fahrenheit)))).ToArray();
        var across = slow.Max(p => ThicknessLimit.Difference(p.Rate, thickness));
        return new(FitChangeCode.SlowedForThickness, step.From, Message.Of(
            "schedules.slowed-for-thickness",
            ("from", QuantityFormat.Rate(step.Speed, question.Fahrenheit)),
            ("thickness", thickness),
            ("rates", rates),
            ("lag", Math.Max(1, question.Fahrenheit ? across * 1.8 : across)),
            ("unit", question.Fahrenheit ? "°F" : "°C")));
    }
}
