using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Quantities;
using ConeService.Data;

namespace ConeService.Firing.Cones;

/// <summary>One cone on one chart: its printed cells and, where there are kinetics, its curve.</summary>
internal sealed class ChartCone
{
    // Scatter of printed points about a smooth curve, and its growth per unit of ln(rate) beyond them, K (docs/cone-curves.md): on the
    // fast side the small cones, the only data there, miss the curves by four times as much as on the slow side.
    private const double SigmaPrinted = 2.3;
    private const double SigmaGrowthSlow = 4.5;
    private const double SigmaGrowthFast = 17;

    // What a cell that was recalled adds: a judgement, K.
    private const double SigmaRemembered = 3;

    // Error of a borrowed shape per unit of ln(rate), measured on the charts that print two rates (docs/cone-curves.md), K.
    private const double SigmaBorrowedGrowth = 6;

    private readonly ConeCurve? own;
    private readonly ConeCurve? shape;
    private readonly IReadOnlyList<EndPointRow> lender;

    /// <summary>Joins the cells with the curve.</summary>
    /// <param name="cone">The cone.</param>
    /// <param name="cells">Its printed cells on the chart, by rate.</param>
    /// <param name="own">The chart's own curve, null when it has no kinetics for the cone.</param>
    /// <param name="shape">The self-supporting curve of the same number to borrow from, null when there is none.</param>
    /// <param name="lender">The cells that the curve to borrow goes through; empty without one.</param>
    /// <param name="oddity">What is odd about the curve, its own or borrowed.</param>
    public ChartCone(
        Cone cone, IReadOnlyList<EndPointRow> cells, ConeCurve? own, ConeCurve? shape, IReadOnlyList<EndPointRow> lender,
        ConeOddity? oddity)
    {
        Cone = cone;
        Cells = cells;
        Oddity = oddity;
        this.own = own;
        this.shape = shape;
        this.lender = lender;
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
        if (CellAt(rate) is { } cell)
        {
            return new(cell.Celsius, Basis.Printed, rate is null ? null : Math.Sqrt(Square(SigmaPrinted) + OfMemory([cell])), [cell], []);
        }

        return rate is { } r ? Computed(r) : null;
    }

    /// <summary>
    /// The end point at a rate by the curve, also where a cell is printed: what a firing rests on, which goes through more of the curve
    /// than one cell. Null without a curve.
    /// </summary>
    public EndPointValue? Computed(HeatingRate rate)
    {
        if (Curve(rate) is not { } curve) return null;
        var celsius = Celsius(curve.EndPoint((double)rate.CelsiusPerHour));
        var (asked, lent) = (Log(rate.CelsiusPerHour), own ?? shape!);
        var from = own is null ? Log(Nearest(rate).RateCelsiusPerHour!.Value) : Math.Clamp(asked, lent.SlowestLog, lent.FastestLog);
        // The way from a printed value to the rate asked for, as far as it lies beyond what the curve was drawn through.
        var slow = Math.Abs(Math.Min(0, asked - lent.SlowestLog) - Math.Min(0, from - lent.SlowestLog));
        var fast = Math.Abs(Math.Max(0, asked - lent.FastestLog) - Math.Max(0, from - lent.FastestLog));
        var borrowed = own is null ? SigmaBorrowedGrowth * Math.Abs(asked - from) : 0;
        var basis = own is null ? Basis.Borrowed : slow + fast > 0 ? Basis.Extrapolated : Basis.Interpolated;
        IReadOnlyList<EndPointRow> cells = own is null ? [Nearest(rate)] : Cells;
        IReadOnlyList<EndPointRow> lenders = own is null ? lender : [];
        var sigma = Math.Sqrt(
            Square(SigmaPrinted) + Square(SigmaGrowthSlow * slow) + Square(SigmaGrowthFast * fast) + Square(borrowed)
            + OfMemory(cells.Concat(lenders)));
        return new(celsius, basis, sigma, cells, lenders);
    }

    private static double OfMemory(IEnumerable<EndPointRow> cells) =>
        cells.Any(c => c.Confidence == Confidence.FromMemory) ? Square(SigmaRemembered) : 0;

    private static double Log(decimal rate) => Math.Log((double)rate);

    private static double Square(double value) => value * value;

    private EndPointRow Nearest(HeatingRate rate) =>
        Cells.MinBy(c => Math.Abs(Math.Log((double)(c.RateCelsiusPerHour!.Value / rate.CelsiusPerHour))))!;

    private static double Kelvin(EndPointRow cell) => Temperature.FromCelsius(cell.Celsius).Kelvin;

    // Four decimals: a ten-thousandth of a kelvin is far below every uncertainty here, and short enough to read.
    private static decimal Celsius(double kelvin) => Math.Round((decimal)kelvin - Temperature.ZeroCelsiusInKelvin, 4);
}
