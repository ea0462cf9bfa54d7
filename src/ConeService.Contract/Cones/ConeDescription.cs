using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Cones;

/// <summary>One cone: its neighbours, the cone it is confused with, and every printed end point.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Cone">The cone.</param>
/// <param name="ConeKind">whole, half or seger-letter.</param>
/// <param name="WholeStep">Index among the 36 whole cones 022 … 14; null outside.</param>
/// <param name="Previous">The next cooler cone; null at the end of the scale.</param>
/// <param name="Next">The next hotter cone; null at the end of the scale.</param>
/// <param name="MixUp">The cone it is confused with; null when there is none of that number, or none up to cone 14.</param>
/// <param name="EndPoints">Every printed end point, by chart and rate.</param>
/// <param name="ChartsDiffer">Why two charts give two figures for this cone; null when only one chart prints it.</param>
/// <param name="Note">What a reader must know about the cone.</param>
/// <param name="Confidence">How far the existence of the cone can be trusted; each end point has its own.</param>
/// <param name="Sources">Ids of the sources.</param>
public sealed record ConeDescription(
    string DatasetVersion,
    string Cone,
    string ConeKind,
    int? WholeStep,
    string? Previous,
    string? Next,
    ConeMixUp? MixUp,
    IReadOnlyList<PrintedEndPoint> EndPoints,
    ChartDifference? ChartsDiffer,
    string? Note,
    Confidence Confidence,
    IReadOnlyList<string> Sources)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("cones", Cone);

    /// <summary>The path of the cone: its text.</summary>
    public string Id => Cone;

    /// <summary>The cone as one says it, which no table takes for a number.</summary>
    public string Name => "cone " + Cone;
}

/// <summary>One printed end point of a cone.</summary>
/// <param name="Chart">The chart that prints it.</param>
/// <param name="RateCelsiusPerHour">Heating rate over the last 100 °C, °C/h; null where the chart states none.</param>
/// <param name="Celsius">End point as printed, °C.</param>
/// <param name="Fahrenheit">End point, °F.</param>
/// <param name="FahrenheitBasis">Whether the chart prints the °F figure, or it was converted or corrected.</param>
/// <param name="Basis">Always printed.</param>
/// <param name="Confidence">How far the value can be trusted.</param>
/// <param name="Source">Id of the source.</param>
/// <param name="Note">Why an oddity stays as printed; null for an ordinary cell.</param>
/// <param name="Href">Address of the cell.</param>
public sealed record PrintedEndPoint(
    string Chart,
    decimal? RateCelsiusPerHour,
    decimal Celsius,
    decimal Fahrenheit,
    FahrenheitBasis FahrenheitBasis,
    Basis Basis,
    Confidence Confidence,
    string Source,
    string? Note,
    Address Href);

/// <summary>The cone that a number is confused with when its leading zero is lost or added.</summary>
/// <param name="Cone">The other cone.</param>
/// <param name="CelsiusDifference">How much hotter the other cone is (negative: cooler), °C.</param>
/// <param name="FahrenheitDifference">The same as a difference in °F.</param>
/// <param name="Chart">The chart that the distance is taken from.</param>
/// <param name="RateCelsiusPerHour">Its rate, °C/h; null where the chart states none.</param>
/// <param name="Message">What happens to ware in the wrong one.</param>
public sealed record ConeMixUp(
    string Cone, decimal CelsiusDifference, decimal FahrenheitDifference, string Chart, decimal? RateCelsiusPerHour, Message Message)
{
    /// <summary>Address of the printed cell of the other cone.</summary>
    public Address Href => TableAddress.OfCell(Chart, Cone, RateCelsiusPerHour);
}

/// <summary>Why charts give different figures for one cone.</summary>
/// <param name="Message">The explanation in words.</param>
/// <param name="AtRates">The spread at each rate that two or more charts print.</param>
/// <param name="SameFigure">Temperatures that charts print for this cone at more than one rate.</param>
public sealed record ChartDifference(Message Message, IReadOnlyList<RateSpread> AtRates, IReadOnlyList<SharedFigure> SameFigure);

/// <summary>The spread of the charts at one rate.</summary>
/// <param name="RateCelsiusPerHour">The rate, °C/h.</param>
/// <param name="LowestCelsius">The lowest printed value, °C.</param>
/// <param name="LowestChart">The chart that prints it.</param>
/// <param name="HighestCelsius">The highest printed value, °C.</param>
/// <param name="HighestChart">The chart that prints it.</param>
/// <param name="LowestHref">Address of the cell with the lowest value.</param>
/// <param name="HighestHref">Address of the cell with the highest value.</param>
public sealed record RateSpread(
    decimal RateCelsiusPerHour, decimal LowestCelsius, string LowestChart, decimal HighestCelsius, string HighestChart,
    Address LowestHref, Address HighestHref);

/// <summary>One temperature printed for a cone at several rates.</summary>
/// <param name="Celsius">The temperature, °C.</param>
/// <param name="Fahrenheit">The temperature, °F.</param>
/// <param name="PrintedBy">Who prints it, for which rate.</param>
public sealed record SharedFigure(decimal Celsius, decimal Fahrenheit, IReadOnlyList<PrintedPoint> PrintedBy);
