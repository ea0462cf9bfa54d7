using ConeService.Data;

namespace ConeService.Firing.Kilns;

/// <summary>
/// The numbers of a kiln that the kiln model takes, as stated. What is left out is taken from kiln-defaults and named in <see
/// cref="KilnSetup.Assumed"/>.
/// </summary>
/// <param name="Heat">What heats it.</param>
/// <param name="VolumeLitres">Inner volume, L, 5 to 5000; not needed with <paramref name="Interior"/>.</param>
/// <param name="Interior">Inner dimensions; they win over no volume and must agree with a stated one within 20 %.</param>
/// <param name="Wall">Wall; absent: by size.</param>
/// <param name="Kilowatts">Rated power, kW: of the elements at <paramref name="VoltsInstalled"/>, or of the burners (net heating value);
/// absent: by size.</param>
/// <param name="VoltsInstalled">Voltage the elements were made for, V; absent: no difference to the supply.</param>
/// <param name="VoltsAsWired">Voltage the kiln really gets, V; power goes with its square.</param>
/// <param name="ElementAge">Age of the elements: 0 new, 1 due for replacement, at most 2; not with
/// <paramref name="ElementFirings"/>.</param>
/// <param name="ElementFirings">Firings since the elements were new; the other way to state their age.</param>
/// <param name="MaxCelsius">Highest temperature that the maker allows, °C; a fit whose programme or curve goes above it is refused.</param>
/// <param name="LeakFactor">How leaky against a kiln with closed lid and vents, 0 to 20; absent: 1. A vent fan or an open vent is 2 to
/// 5.</param>
/// <param name="FuelFactor">Gas: fuel really burnt over the lower bound, 1 to 10, from the kiln's own meter; absent: no claim beyond the
/// bound.</param>
internal sealed record StatedKiln(
    KilnHeat Heat,
    double? VolumeLitres = null,
    StatedInterior? Interior = null,
    StatedWall? Wall = null,
    double? Kilowatts = null,
    double? VoltsInstalled = null,
    double? VoltsAsWired = null,
    double? ElementAge = null,
    int? ElementFirings = null,
    double? MaxCelsius = null,
    double? LeakFactor = null,
    double? FuelFactor = null);

/// <summary>Inner dimensions, mm, 100 to 5000: width and depth, or diameter.</summary>
internal sealed record StatedInterior(
    double HeightMillimetres,
    double? WidthMillimetres = null,
    double? DepthMillimetres = null,
    double? DiameterMillimetres = null);

/// <summary>The wall: a wall material of kiln-materials, and its thickness in mm, 10 to 500.</summary>
internal sealed record StatedWall(string? Material = null, double? ThicknessMillimetres = null);
