using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Tests.Support;
using CsCheck;
using MathNet.Numerics.Integration;
using static ConeService.Firing.Tests.HeatWork.Firings;

namespace ConeService.Firing.Tests.HeatWork;

/// <summary>
/// What must hold for every history (heat-work specification, section 2), and the closed form against numerical
/// quadrature.
/// </summary>
public class IdentityTests
{
    private static readonly BendingCurve[] Curves = [.. Reference.Charts.Default.Cones.Select(c => c.Curve(new(60))!)];

    private static readonly Gen<BendingCurve> AnyCurve = Gen.Int[0, Curves.Length - 1].Select(i => Curves[i]);

    // Two to seven moments near the working range of a curve, holds among them. Whole steps of 1.7 K: a piece of less
    // than a kelvin carries the rounding of K(T₂)−K(T₁), about 1e-14/(s·ΔT).
    private static readonly Gen<(BendingCurve Curve, HeatHistory History)> AnyFiring = Gen.Select(
        AnyCurve, Gen.Select(Gen.Double[0.01, 3], Gen.Int[-90, 18].Select(i => i * 1.7)).Array[2, 7],
        (curve, steps) => (curve, Steps(steps.Select(s => (s.Item1, curve.EndPoint(60) + s.Item2)))));

    [Fact]
    public void K_at_the_end_point_is_the_rate() => Gen.Select(AnyCurve, Gen.Double[5, 600]).Sample((curve, rate) =>
        Assert.Equal(Math.Log(rate), curve.LogK(curve.EndPoint(rate)), 1e-12 * Math.Log(rate)));

    [Fact]
    public void K_rises_with_temperature() => Gen.Select(AnyCurve, Gen.Double[300, 1770], Gen.Double[0.001, 50]).Sample((curve, t, step) =>
        Assert.True(curve.LogK(t + step) > curve.LogK(t)));

    [Fact]
    public void A_hold_of_one_over_k_puts_the_cone_down() => Gen.Select(AnyCurve, Gen.Double[-80, 40]).Sample((curve, away) =>
    {
        var t = curve.EndPoint(60) + away;
        Assert.Equal(1, HeatIntegral.Progress(curve, Steps([(1, t), (1 / curve.BendRate(t), t)])), 1e-12);
    });

    [Fact]
    public void Splitting_pieces_changes_nothing() => AnyFiring.Sample(x =>
    {
        var whole = HeatIntegral.Progress(x.Curve, x.History);
        Assert.Equal(1, HeatIntegral.Progress(x.Curve, Split(x.History, 1000)) / whole, 1e-12);
    }, iter: 20);

    [Fact]
    public void Stretching_time_stretches_the_work() => Gen.Select(AnyFiring, Gen.Double[0.1, 10]).Sample((x, factor) =>
    {
        HeatHistory slower = new(x.History.Points.ToArray().Select(p => p with { Hours = p.Hours * factor }).ToArray());
        Assert.Equal(factor, HeatIntegral.Progress(x.Curve, slower) / HeatIntegral.Progress(x.Curve, x.History), 1e-11);
    });

    [Fact]
    public void Running_a_firing_backwards_does_the_same_work() => AnyFiring.Sample(x =>
    {
        var end = x.History.End.Hours;
        HeatHistory back = new(x.History.Points.ToArray().Reverse().Select(p => p with { Hours = end - p.Hours }).ToArray());
        Assert.Equal(1, HeatIntegral.Progress(x.Curve, back) / HeatIntegral.Progress(x.Curve, x.History), 1e-11);
    });

    [Fact]
    public void The_order_of_the_pieces_does_not_matter() => AnyFiring.Sample(x =>
    {
        var pieces = Pieces(x.History).ToList();
        var sum = pieces.AsEnumerable().Reverse().Sum(p => HeatIntegral.OfPiece(x.Curve, p.From, p.To, p.Hours));
        Assert.Equal(1, sum / HeatIntegral.Progress(x.Curve, x.History), 1e-11);
    });

    [Fact]
    public void Work_never_shrinks_with_time() => AnyFiring.Sample(x =>
    {
        foreach (var (from, to, hours) in Pieces(Split(x.History, 5))) Assert.True(HeatIntegral.OfPiece(x.Curve, from, to, hours) >= 0);
    });

    // The closed form uses K alone; the quadrature uses k alone, through MathNet.Numerics.
    [Fact]
    public void The_closed_form_is_the_integral() => AnyFiring.Sample(x =>
    {
        var quadrature = Pieces(x.History).Sum(p =>
        {
            if (p.From == p.To) return p.Hours * x.Curve.BendRate(p.From);
            // Panels that end at the curve's knots, where its second derivative jumps: printed values are whole °C.
            var cuts = Enumerable.Range(0, 2000).Select(c => c + Zero).Where(c => c > Math.Min(p.From, p.To) && c < Math.Max(p.From, p.To));
            double[] ends = [Math.Min(p.From, p.To), .. cuts, Math.Max(p.From, p.To)];
            return ends.Zip(ends.Skip(1))
                .Sum(e => GaussKronrodRule.Integrate(x.Curve.BendRate, e.First, e.Second, out _, out _, 1e-12, 15))
                * p.Hours / Math.Abs(p.To - p.From);
        });
        Assert.Equal(1, HeatIntegral.Progress(x.Curve, x.History) / quadrature, 1e-9);
    }, iter: 100);

    // Up, hold and down in closed form: I = K(T_p)(1/b_up + 1/b_down) + k(T_p)·t_hold.
    [Fact]
    public void Up_hold_and_down_have_a_closed_form() => Gen.Select(
        AnyCurve, Gen.Double[5, 600], Gen.Double[5, 600], Gen.Double[0, 5])
        .Sample((curve, up, down, hold) =>
    {
        var peak = curve.EndPoint(60);
        var expected = (curve.K(peak) * ((1 / up) + (1 / down))) + (curve.BendRate(peak) * hold);
        Assert.Equal(1, HeatIntegral.Progress(curve, Ramp(up, peak - Zero, hold * 60, Down(down)).ToHistory()) / expected, 1e-12);
    });

    // The moment the cone goes down: the work until then is 1.
    [Fact]
    public void The_cone_is_down_when_the_work_is_done() => AnyFiring.Sample(x =>
    {
        var progress = HeatIntegral.Progress(x.Curve, x.History, out var at);
        Assert.Equal(progress >= HeatIntegral.Down, at is not null);
        if (at is not { } hours || hours <= x.History.Start.Hours + 1e-9) return;
        Assert.Equal(1, HeatIntegral.Progress(x.Curve, Until(x.History, hours)), 1e-6);
    });

    private static HeatHistory Steps(IEnumerable<(double Hours, double Kelvin)> steps)
    {
        var now = 0.0;
        return new(steps.Select(s => new HeatPoint(now += s.Hours, s.Kelvin)).ToArray());
    }

    private static IEnumerable<(double From, double To, double Hours)> Pieces(HeatHistory history)
    {
        var points = history.Points.ToArray();
        return points.Zip(points.Skip(1)).Select(p => (p.First.Kelvin, p.Second.Kelvin, p.Second.Hours - p.First.Hours));
    }

    private static HeatHistory Split(HeatHistory history, int parts)
    {
        var points = history.Points.ToArray();
        HeatPoint[] split =
        [
            points[0],
            .. points.Zip(points.Skip(1))
                .SelectMany(p => Enumerable.Range(1, parts).Select(i => Between(p.First, p.Second, (double)i / parts))),
        ];
        return new(split);
    }

    private static HeatHistory Until(HeatHistory history, double hours)
    {
        var points = history.Points.ToArray();
        var next = Array.FindIndex(points, p => p.Hours >= hours);
        var (a, b) = (points[next - 1], points[next]);
        HeatPoint[] until = [.. points.Take(next), Between(a, b, (hours - a.Hours) / (b.Hours - a.Hours))];
        return new(until);
    }

    private static HeatPoint Between(HeatPoint a, HeatPoint b, double share) =>
        new(a.Hours + ((b.Hours - a.Hours) * share), a.Kelvin + ((b.Kelvin - a.Kelvin) * share));
}
