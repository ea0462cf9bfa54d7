namespace ConeService.Firing.Cones;

/// <summary>The shape of another chart's curve, moved along the temperature axis through a value that this chart prints.</summary>
/// <param name="shape">The curve whose shape is borrowed.</param>
/// <param name="offset">How far it is moved, K; positive to hotter.</param>
internal sealed class ShiftedCurve(BendingCurve shape, double offset) : BendingCurve
{
    /// <summary>The curve through one printed end point.</summary>
    /// <param name="shape">The curve whose shape is borrowed.</param>
    /// <param name="rate">The printed rate, °C/h.</param>
    /// <param name="kelvin">The printed end point, K.</param>
    public static ShiftedCurve Through(BendingCurve shape, double rate, double kelvin) => new(shape, kelvin - shape.EndPoint(rate));

    /// <inheritdoc/>
    public override double KnotPhase => Fraction(shape.KnotPhase + offset);

    /// <inheritdoc/>
    public override double LogK(double temperature) => shape.LogK(temperature - offset);

    /// <inheritdoc/>
    public override double Slope(double temperature) => shape.Slope(temperature - offset);

    /// <inheritdoc/>
    public override double Inverse(double logK) => shape.Inverse(logK) + offset;
}
