using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Kilns;
using ConeService.Contract.Problems;
using ConeService.Contract.Requests;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.Reading;
using ConeService.Firing.Room;

namespace ConeService.Firing.Kilns;

/// <summary>
/// Reads a kiln member by member, as a route needs them. What is wrong is collected with its JSON pointer; a member that the
/// route does not ask for is not judged, so that one record of a kiln serves them all.
/// </summary>
/// <param name="sent">The kiln as sent.</param>
/// <param name="scale">The scale of cones.</param>
/// <param name="at">JSON pointer to the kiln.</param>
/// <param name="findings">Where findings go.</param>
internal sealed class KilnReader(Kiln sent, ConeScale scale, string at, ICollection<Finding> findings)
{
    private static readonly Bounds Segments = Bounds.Of<Kiln>(nameof(Kiln.ControllerSegments));
    private static readonly decimal MostMillimetres = (decimal)Bounds.Of<Interior>(nameof(Interior.HeightMillimetres)).High;

    // Nobody sells shelves as thick; more is a slip, and the load check reads shelves only by the way.
    private const decimal ThickestShelf = 50;

    // In whichever unit.
    private static readonly decimal LeastOfAll = (decimal)Bounds.Of<Kiln>(nameof(Kiln.MaxTemperature)).Low;
    private static readonly decimal MostOfAll = (decimal)Bounds.Of<Kiln>(nameof(Kiln.MaxTemperature)).High;

    // As plans take them.
    private const decimal MostLayers = 100;
    private const decimal MostBeside = 20;

    private readonly MemberReader members = new(findings);

    /// <summary>The caller's name for the kiln; null when left out.</summary>
    public string? Id() => members.Text(sent.Id, at + "/id", "front-loader");

    /// <summary>What heats it; required.</summary>
    public KilnHeat? Heat() => members.Word<KilnHeat>(sent.Heat, at + "/heat");

    /// <summary>The hottest cone that its maker allows; null when left out.</summary>
    public Cone? MaxCone()
    {
        if (sent.MaxCone.IsAbsent) return null;
        if (ConeInput.TryRead(scale, sent.MaxCone, at + "/maxCone", out var cone, out var wrong)) return cone;
        findings.Add(wrong!);
        return null;
    }

    /// <summary>The atmospheres it can hold; required.</summary>
    public IReadOnlyList<Atmosphere>? Atmospheres() => members.Words(sent.Atmospheres, at + "/atmospheres", Data.Atmospheres.OfFirings);

    /// <summary>Segments that its controller holds; null when left out.</summary>
    public int? ControllerSegments()
    {
        if (members.Whole(sent.ControllerSegments, at + "/controllerSegments") is not { } segments) return null;
        if (Segments.Contain(segments)) return segments;
        findings.Add(new(
            FindingCodes.ControllerTooSmall, at + "/controllerSegments", sent.ControllerSegments.Text,
            Message.Of("kilns.segments-out-of-range", ("sent", sent.ControllerSegments.Text)),
            [Message.Of("kilns.segments-allowed", ("least", Segments.Low), ("most", Segments.High))],
            Message.Of("kilns.segments-needed")));
        return null;
    }

    /// <summary>
    /// The room for ware, mm, a round one as wide and deep as its diameter; null when left out. Only the height is required.
    /// </summary>
    public (decimal Height, decimal? Width, decimal? Depth)? Room()
    {
        if (sent.Interior is not { } inside) return null;
        var field = at + "/interior";
        var height = Height(inside, field)
            ? members.Millimetres(inside.HeightMillimetres, field + "/heightMillimetres", MostMillimetres)
            : null;
        var width = members.Millimetres(inside.WidthMillimetres, field + "/widthMillimetres", MostMillimetres);
        var depth = members.Millimetres(inside.DepthMillimetres, field + "/depthMillimetres", MostMillimetres);
        var diameter = members.Millimetres(inside.DiameterMillimetres, field + "/diameterMillimetres", MostMillimetres);
        if (diameter is not null && (width ?? depth) is not null) findings.Add(KilnFindings.Shapeless(field));
        return height is null ? null : (height.Value, diameter ?? width, diameter ?? depth ?? width);
    }

    /// <summary>Thickness of its shelves, mm; 0 where nothing, or nothing that can be used, is said of it.</summary>
    public decimal ShelfThickness() => Usable(sent.Shelves?.ThicknessMillimetres, ThickestShelf) ?? 0;

    /// <summary>What is said of its shelves, as far as it can be used.</summary>
    public ToldShelves Shelves()
    {
        if (sent.Shelves is not { } told) return ToldShelves.Nothing;
        return new(
            (int?)Usable(told.Layers, MostLayers), (int)(Usable(told.PerLayer, MostBeside) ?? 1),
                Usable(told.ThicknessMillimetres, ThickestShelf),
            Usable(told.WidthMillimetres, MostMillimetres), Usable(told.DepthMillimetres, MostMillimetres),
            Usable(told.DiameterMillimetres, MostMillimetres));
    }

    /// <summary>The hottest that its maker allows, °C; null when left out.</summary>
    /// <param name="fahrenheit">True when temperatures were sent in °F.</param>
    public double? MaxCelsius(bool fahrenheit) =>
        Number(sent.MaxTemperature, "maxTemperature") is not { } most ? null : fahrenheit ? (most - 32) / 1.8 : most;

    /// <summary>
    /// The hottest that its maker allows as a number, where the request has no unit of temperature; null where nothing, or nothing
    /// that can be used, is said of it.
    /// </summary>
    public decimal? MostDegrees() => Usable(sent.MaxTemperature, MostOfAll) is { } most && most >= LeastOfAll ? most : null;

    /// <summary>All that the kiln model takes, as numbers; <see cref="KilnModel.Resolve"/> judges them.</summary>
    /// <param name="heat">What heats it.</param>
    /// <param name="fahrenheit">True when temperatures were sent in °F.</param>
    public StatedKiln ForModel(KilnHeat heat, bool fahrenheit) => new(
        heat,
        VolumeLitres: Number(sent.VolumeLitres, "volumeLitres"),
        Interior: Inside(),
        Wall: sent.Wall is not { } wall ? null : new(
            members.Text(wall.Material, at + "/wall/material", "insulating-firebrick"),
            Number(wall.ThicknessMillimetres, "wall/thicknessMillimetres")),
        Kilowatts: Number(sent.Kilowatts, "kilowatts"),
        VoltsInstalled: Number(sent.VoltsInstalled, "voltsInstalled"),
        VoltsAsWired: Number(sent.VoltsAsWired, "voltsAsWired"),
        ElementAge: Number(sent.ElementAge, "elementAge"),
        ElementFirings: members.Whole(sent.ElementFirings, at + "/elementFirings"),
        MaxCelsius: MaxCelsius(fahrenheit),
        LeakFactor: Number(sent.LeakFactor, "leakFactor"),
        FuelFactor: Number(sent.FuelFactor, "fuelFactor"));

    private StatedInterior? Inside()
    {
        if (sent.Interior is not { } inside || !Height(inside, at + "/interior")) return null;
        return Number(inside.HeightMillimetres, "interior/heightMillimetres") is not { } height ? null : new(
            height,
            Number(inside.WidthMillimetres, "interior/widthMillimetres"),
            Number(inside.DepthMillimetres, "interior/depthMillimetres"),
            Number(inside.DiameterMillimetres, "interior/diameterMillimetres"));
    }

    private bool Height(Interior inside, string field)
    {
        if (!inside.HeightMillimetres.IsAbsent) return true;
        members.Missing(field + "/heightMillimetres", [Message.Of("members.any-millimetres")]);
        return false;
    }

    // The load check reads shelves only by the way: what can't be used is as if it were not told.
    private static decimal? Usable(SentText? sent, decimal most) =>
        sent is { Kind: SentKind.Number } number
        && decimal.TryParse(number.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
        && value > 0 && value <= most ? value : null;

    private double? Number(SentText number, string member) => members.Number(number, $"{at}/{member}");
}
