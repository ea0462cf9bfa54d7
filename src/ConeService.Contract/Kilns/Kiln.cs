using System.ComponentModel.DataAnnotations;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Requests;
using ConeService.Data;

namespace ConeService.Contract.Kilns;

/// <summary>
/// A kiln as its keeper knows it: one record for every route. Each route requires only what it needs and leaves the rest alone,
/// unread and unjudged.
/// </summary>
/// <param name="Id">Your name for it, repeated in answers.</param>
/// <param name="Heat">What heats it: electric, gas, wood, raku or vapour (kept for salt or soda).</param>
/// <param name="Atmospheres">The atmospheres it can hold: oxidation, neutral, reduction.</param>
/// <param name="MaxCone">The highest cone that its maker allows, as text.</param>
/// <param name="MaxTemperature">The highest temperature that its maker allows, in the units of the request: 500 to 1800 °C, 932 to
/// 3272 °F.</param>
/// <param name="Interior">The room for ware.</param>
/// <param name="VolumeLitres">Inner volume, L, 5 to 5000; not needed with <paramref name="Interior"/>.</param>
/// <param name="Wall">Its wall; left out: by size.</param>
/// <param name="Kilowatts">Rated power, kW: of the elements at <paramref name="VoltsInstalled"/>, or of the burners; left out: by
/// size.</param>
/// <param name="VoltsInstalled">Voltage the elements were made for, V.</param>
/// <param name="VoltsAsWired">Voltage the kiln really gets, V; power goes with its square.</param>
/// <param name="ElementAge">Age of the elements: 0 new, 1 due for replacement, at most 2.</param>
/// <param name="ElementFirings">Firings since the elements were new, instead of their age.</param>
/// <param name="ControllerSegments">Segments that its controller holds, 2 to 99; left out: as many as it takes.</param>
/// <param name="LeakFactor">How leaky against a closed kiln, 0 to 20; an open vent is 2 to 5.</param>
/// <param name="FuelFactor">Fuel really burnt over the lower bound, from your own meter, 1 to 10; not of an electric kiln.</param>
/// <param name="Thermocouple">Its thermocouple.</param>
/// <param name="Shelves">Its shelves.</param>
[Needs(nameof(Heat))]
public sealed record Kiln(
    SentText Id = default,
    [property: WordsOf(typeof(KilnHeat))] SentText Heat = default,
    [property: AtmosphereWords(AtmosphereUse.Firing), Items(1)] IReadOnlyList<SentText>? Atmospheres = null,
    [property: RegularExpression(ConeSpelling.Pattern)] SentText MaxCone = default,
    [property: Range(500.0, 3272.0)] SentText MaxTemperature = default,
    Interior? Interior = null,
    [property: Range(5.0, 5000.0)] SentText VolumeLitres = default,
    KilnWall? Wall = null,
    [property: Range(0.3, 2000.0)] SentText Kilowatts = default,
    [property: Range(50.0, 1000.0)] SentText VoltsInstalled = default,
    [property: Range(50.0, 1000.0)] SentText VoltsAsWired = default,
    [property: Range(0.0, 2.0)] SentText ElementAge = default,
    [property: Range(0, 5000)] SentText ElementFirings = default,
    [property: Range(2, 99)] SentText ControllerSegments = default,
    [property: Range(0.0, 20.0)] SentText LeakFactor = default,
    [property: Range(1.0, 10.0)] SentText FuelFactor = default,
    ThermocoupleInput? Thermocouple = null,
    KilnShelves? Shelves = null);

/// <summary>Inner dimensions of a kiln: a box (height, width, depth) or a round or many-sided chamber (height, diameter), mm. What
/// a kiln does is reckoned for those of 100 mm and more.</summary>
/// <param name="HeightMillimetres">Inner height, mm.</param>
/// <param name="WidthMillimetres">Inner width, mm.</param>
/// <param name="DepthMillimetres">Inner depth, mm.</param>
/// <param name="DiameterMillimetres">Inner diameter, mm; instead of width and depth.</param>
[Needs(nameof(HeightMillimetres))]
public sealed record Interior(
    [property: Range(0.0, 5000.0, MinimumIsExclusive = true)] SentText HeightMillimetres = default,
    [property: Range(0.0, 5000.0, MinimumIsExclusive = true)] SentText WidthMillimetres = default,
    [property: Range(0.0, 5000.0, MinimumIsExclusive = true)] SentText DepthMillimetres = default,
    [property: Range(0.0, 5000.0, MinimumIsExclusive = true)] SentText DiameterMillimetres = default);

/// <summary>The wall of a kiln, one material through.</summary>
/// <param name="Material">A wall material of kiln-materials, such as insulating-firebrick; left out: by size.</param>
/// <param name="ThicknessMillimetres">Thickness, mm, 10 to 500; left out: by size.</param>
public sealed record KilnWall(
    SentText Material = default, [property: Range(10.0, 500.0)] SentText ThicknessMillimetres = default);

/// <summary>The shelves that a kiln has, all alike.</summary>
/// <param name="Layers">How many layers of them it has.</param>
/// <param name="PerLayer">How many lie side by side in a layer.</param>
/// <param name="ThicknessMillimetres">Thickness of a shelf, mm.</param>
/// <param name="WidthMillimetres">Width of a shelf, mm.</param>
/// <param name="DepthMillimetres">Depth of a shelf, mm.</param>
/// <param name="DiameterMillimetres">Diameter of a round shelf, mm; instead of width and depth.</param>
public sealed record KilnShelves(
    [property: SentAs(SentForm.Number)] SentText Layers = default,
    [property: SentAs(SentForm.Number)] SentText PerLayer = default,
    [property: SentAs(SentForm.Number)] SentText ThicknessMillimetres = default,
    [property: SentAs(SentForm.Number)] SentText WidthMillimetres = default,
    [property: SentAs(SentForm.Number)] SentText DepthMillimetres = default,
    [property: SentAs(SentForm.Number)] SentText DiameterMillimetres = default);
