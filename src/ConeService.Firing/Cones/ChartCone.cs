using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Quantities;
using ConeService.Data;

namespace ConeService.Firing.Cones;

/// <summary>One cone on one chart: its printed cells and, where there are kinetics, its curve.</summary>
internal sealed class ChartCone
{
    // HEAT-WORK: scatter of printed points about a smooth curve, and its growth per unit of ln(rate) outside them, K.
    private const double SigmaPrinted = 2.3;
    private const double SigmaGrowth = 4.5;

    // Error of a borrowed shape per unit of ln(rate), measured on the charts that print two rates (docs/cone-curves.md), K.
    private const double SigmaBorrowedGrowth = 6;

    private readonly ConeCurve? own;
    private readonly ConeCurve? shape;

    /// <summary>Joins the cells with the curve.</summary>
    /// <param name="cone">The cone.</param>
    /// <param name="cells">Its printed cells on the chart, by rate.</param>
    /// <param name="own">The chart's own curve, null when it has no kinetics for the cone.</param>
    /// <param name="shape">The self-supporting curve of the same number to borrow from, null when there is none.</param>
    /// <param name="oddity">What is odd about the curve, its own or borrowed.</param>
    public ChartCone(Cone cone, IReadOnlyList<EndPointRow> cells, ConeCurve? own, ConeCurve? shape, ConeOddity? oddity)
    {
        Cone = cone;
        Cells = cells;
        Oddity = oddity;
        this.own = own;
        this.shape = shape;
    }

    /// <summary>The cone.</summary>
    public Cone Cone { get; }

    /// <summary>The printed cells, by rate; one without rate where the chart states none.</summary>
    public IReadOnlyList<EndPointRow> Cells { get; }

    /// <summary>Why an answer that the cone decides needs a warning; null where it needs none.</summary>
    public ConeOddity? Oddity { get; }

    /// <summary>True when the chart states a rate for this cone.</summary>
    public bool HasRates => Cells[0].RateCelsiusPerHour is not null;

    /// <summary>The cell printed for a rate, or for no rate.</summary>
    public EndPointRow? CellAt(HeatingRate? rate) => Cells.FirstOrDefault(c => c.RateCelsiusPerHour == rate?.CelsiusPerHour);

    /// <summary>The curve to compute with at a rate: the chart's own, else a borrowed one; null when neither exists.</summary>
    /// <remarks>A borrowed shape goes through the printed value whose rate is nearest to the one asked for.</remarks>
    public BendingCurve? Curve(HeatingRate rate) =>
        own ?? (shape is null || !HasRates
            ? null
            : (BendingCurve)ShiftedCurve.Through(shape, (double)Nearest(rate).RateCelsiusPerHour!.Value, Kelvin(Nearest(rate))));

    /// <summary>The end point at a rate; null when the chart gives no way to tell.</summary>
    public EndPointValue? At(HeatingRate? rate)
    {
        if (CellAt(rate) is { } cell) return new(cell.Celsius, Basis.Printed, rate is null ? null : SigmaPrinted, [cell]);
        if (rate is not { } r || Curve(r) is not { } curve) return null;
        var celsius = Celsius(curve.EndPoint((double)r.CelsiusPerHour));
        if (own is null)
        {
            var away = Math.Abs(Math.Log((double)(r.CelsiusPerHour / Nearest(r).RateCelsiusPerHour!.Value)));
            return new(celsius, Basis.Borrowed, Math.Sqrt(Sum(Sigma(shape!, r), SigmaBorrowedGrowth * away)), [Nearest(r)]);
        }

        var inside = (double)r.CelsiusPerHour >= own.SlowestPrinted && (double)r.CelsiusPerHour <= own.FastestPrinted;
        return new(celsius, inside ? Basis.Interpolated : Basis.Extrapolated, Sigma(own, r), Cells);
    }

    private static double Sigma(ConeCurve curve, HeatingRate rate)
    {
        var y = Math.Log((double)rate.CelsiusPerHour);
        var outside = Math.Max(0, Math.Max(Math.Log(curve.SlowestPrinted) - y, y - Math.Log(curve.FastestPrinted)));
        return Math.Sqrt(Sum(SigmaPrinted, SigmaGrowth * outside));
    }

    private static double Sum(double a, double b) => (a * a) + (b * b);

    private EndPointRow Nearest(HeatingRate rate) =>
        Cells.MinBy(c => Math.Abs(Math.Log((double)(c.RateCelsiusPerHour!.Value / rate.CelsiusPerHour))))!;

    private static double Kelvin(EndPointRow cell) => Temperature.FromCelsius(cell.Celsius).Kelvin;

    // Four decimals: a ten-thousandth of a kelvin is far below every uncertainty here, and short enough to read.
    private static decimal Celsius(double kelvin) => Math.Round((decimal)kelvin - Temperature.ZeroCelsiusInKelvin, 4);
}
