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
    // A rate this near to its neighbour's, or so little time, is not worth a segment of its own; a short piece not even more time.
    private const double NearRate = 0.85;
    private const double LittleHours = 0.25;
    private const double ShortPiece = 40;
    private const double ShortPieceHours = 0.5;

    /// <summary>Slows the steps; never makes one faster than the template has it.</summary>
    public static void Apply(
        List<FitStep> steps, FitQuestion question, ScheduleCatalogue catalogue, double startCelsius, List<FitChange> changes)
    {
        var limits = Limits(question, catalogue);
        if (limits.Count == 0) return;
        var (from, lastSpan) = (startCelsius, catalogue.Default("last-ramp-span"));
        for (var i = 0; i < steps.Count && steps[i].Celsius >= from; i++)
        {
            var step = steps[i];
            var pieces = Pieces(from, step.Celsius, step.Speed, limits, step.Target == StepTarget.Peak ? lastSpan : 0);
            from = step.Celsius;
            if (pieces.All(p => p.Rate >= step.Speed - 1e-9)) continue;
            changes.Add(Change(step, pieces, question));
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
                    Stage = Stage(p.Purpose) ?? step.Stage,
                }));
            i += pieces.Count - 1;
        }

        Tidy(steps);
    }

    private static List<WallLimit> Limits(FitQuestion question, ScheduleCatalogue catalogue)
    {
        // Up to the wall that a template was made for, its own rates are the advice.
        var thin = question.LagMillimetres is not { } lag || lag <= (double?)question.Schedule.Row.ThicknessMaxMillimetres;
        return
        [
            .. thin ? [] : WallLimits.Heating(catalogue, question.LagMillimetres!.Value, question.Greenware),
            .. question.Flat ? [WallLimits.FlatHeating(catalogue)] : (WallLimit[])[],
        ];
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

    private sealed record Piece(double From, double To, double Rate, LimitPurpose? Purpose)
    {
        public double HoursMoreAt(double rate) => (To - From) * ((1 / rate) - (1 / Rate));
    }

    private static List<Piece> Pieces(double from, double to, double speed, List<WallLimit> limits, double lastSpan)
    {
        double[] cuts = [from, .. limits.SelectMany(l => new[] { l.From, l.To }).Where(t => t > from && t < to).Distinct().Order(), to];
        var pieces = cuts.Zip(cuts.Skip(1)).Select(c =>
        {
            var tightest = limits.Where(l => l.From < c.Second && l.To > c.First).MinBy(l => l.Rate);
            return tightest is not null && tightest.Rate < speed
                ? new Piece(c.First, c.Second, tightest.Rate, tightest.Purpose)
                : new Piece(c.First, c.Second, speed, null);
        }).ToList();
        while (pieces.Count > 1 && Joinable(pieces) is { } at) Join(pieces, at);
        // Charts state the rate over the last ramp, which therefore is one.
        while (pieces.Count > 1 && pieces[^1].To - pieces[^1].From < lastSpan) Join(pieces, pieces.Count - 2);
        return pieces;
    }

    private static void Join(List<Piece> pieces, int at)
    {
        var (a, b) = (pieces[at], pieces[at + 1]);
        pieces.RemoveAt(at + 1);
        pieces[at] = new(a.From, b.To, Math.Min(a.Rate, b.Rate), a.Rate <= b.Rate ? a.Purpose : b.Purpose);
    }

    private static int? Joinable(List<Piece> pieces)
    {
        for (var i = 0; i + 1 < pieces.Count; i++)
        {
            var (a, b) = (pieces[i], pieces[i + 1]);
            var slow = Math.Min(a.Rate, b.Rate);
            var more = Math.Max(a.HoursMoreAt(slow), b.HoursMoreAt(slow));
            var isShort = Math.Min(a.To - a.From, b.To - b.From) < ShortPiece;
            if (slow >= NearRate * Math.Max(a.Rate, b.Rate) || more < (isShort ? ShortPieceHours : LittleHours)) return i;
        }

        return null;
    }

    private static FiringStage? Stage(LimitPurpose? purpose) => purpose switch
    {
        LimitPurpose.Drying => FiringStage.Drying,
        LimitPurpose.Steam => FiringStage.Steam,
        LimitPurpose.BoundWater or LimitPurpose.Quartz => FiringStage.BoundWater,
        LimitPurpose.BurnOut => FiringStage.BurnOut,
        _ => null,
    };

    private static FitChange Change(FitStep step, List<Piece> pieces, FitQuestion question)
    {
        var grid = new ControllerGrid(question.Fahrenheit);
        var slow = pieces.Where(p => p.Rate < step.Speed).ToList();
        var rates = slow.Select(p => Message.Of(
            "schedules.rate-up-to",
            ("rate", QuantityFormat.Rate(grid.RateBelow(p.Rate), question.Fahrenheit)),
            ("target", QuantityFormat.Temperature(p.To, question.Fahrenheit)),
            ("buys", EnumWords.Word(p.Purpose!.Value)),
            ("time", QuantityFormat.Duration(60 * (p.To - p.From) * ((1 / grid.RateBelow(p.Rate)) - (1 / step.Speed)))))).ToArray();
        if (question.Flat)
        {
            return new(FitChangeCode.SlowedForThickness, step.From, Message.Of(
                "schedules.slowed-for-flat-ware", ("from", QuantityFormat.Rate(step.Speed, question.Fahrenheit)), ("rates", rates)));
        }

        var thickness = question.ThicknessMillimetres!.Value;
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
