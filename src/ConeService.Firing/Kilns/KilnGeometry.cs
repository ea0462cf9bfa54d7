namespace ConeService.Firing.Kilns;

/// <summary>Size of a chamber.</summary>
/// <param name="CubicMetres">Inner volume, m³.</param>
/// <param name="SquareMetres">Inner surface, m².</param>
internal readonly record struct KilnGeometry(double CubicMetres, double SquareMetres)
{
    /// <summary>Side of the cube with the same area over volume, m.</summary>
    public double SideMetres => 6 * CubicMetres / SquareMetres;

    public static KilnGeometry OfVolume(double litres, double shape) => new(litres / 1000, shape * Math.Pow(litres / 1000, 2.0 / 3));

    public static KilnGeometry OfBox(double width, double depth, double height)
    {
        var (w, d, h) = (width / 1000, depth / 1000, height / 1000);
        return new(w * d * h, 2 * ((w * d) + (w * h) + (d * h)));
    }

    public static KilnGeometry OfRound(double diameter, double height)
    {
        var (d, h) = (diameter / 1000, height / 1000);
        return new(Math.PI * d * d / 4 * h, Math.PI * d * (h + (d / 2)));
    }
}
