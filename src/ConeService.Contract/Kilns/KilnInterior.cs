namespace ConeService.Contract.Kilns;

/// <summary>Inner dimensions of a kiln: a box (width, depth, height) or a round or many-sided chamber (diameter, height), mm.</summary>
/// <param name="HeightMillimetres">Inner height, mm.</param>
/// <param name="WidthMillimetres">Inner width, mm.</param>
/// <param name="DepthMillimetres">Inner depth, mm.</param>
/// <param name="DiameterMillimetres">Inner diameter, mm; instead of width and depth.</param>
public sealed record KilnInterior(double HeightMillimetres, double? WidthMillimetres = null, double? DepthMillimetres = null, double? DiameterMillimetres = null);

/// <summary>The wall of a kiln, one material through.</summary>
/// <param name="Material">A wall material of kiln-materials, such as insulating-firebrick; absent: by size.</param>
/// <param name="ThicknessMillimetres">Thickness, mm, 10 to 500; absent: by size.</param>
public sealed record KilnWallInput(string? Material = null, double? ThicknessMillimetres = null);
