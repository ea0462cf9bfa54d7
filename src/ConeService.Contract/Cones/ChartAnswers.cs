using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Cones;

/// <summary>A published chart.</summary>
/// <param name="Id">Name of the chart.</param>
/// <param name="Name">What the chart is.</param>
/// <param name="ConeForm">Form of the cones it is for.</param>
/// <param name="Composition">Composition of the cones.</param>
/// <param name="RatesCelsiusPerHour">The rates it prints, °C/h; empty when it states none.</param>
/// <param name="DefaultRateCelsiusPerHour">The rate taken when a caller names none, °C/h; null when it states none.</param>
/// <param name="LowestCone">The coolest cone it prints.</param>
/// <param name="HighestCone">The hottest cone it prints.</param>
/// <param name="Cells">Number of printed end points.</param>
/// <param name="ConfidenceCounts">How many of them have each confidence.</param>
/// <param name="Confidence">How far this description can be trusted.</param>
/// <param name="Source">Id of the source.</param>
/// <param name="Note">What a reader must know about the chart.</param>
/// <param name="Locator">Page, table or figure of the source that prints it; null where that is not known.</param>
public sealed record ChartSummary(
    string Id,
    string Name,
    string ConeForm,
    string Composition,
    IReadOnlyList<decimal> RatesCelsiusPerHour,
    decimal? DefaultRateCelsiusPerHour,
    string LowestCone,
    string HighestCone,
    int Cells,
    IReadOnlyList<ConfidenceCount> ConfidenceCounts,
    Confidence Confidence,
    string Source,
    string? Note,
    string? Locator)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("charts", Id);
}

/// <summary>How many cells have one confidence.</summary>
/// <param name="Confidence">The confidence.</param>
/// <param name="Cells">Number of cells.</param>
public sealed record ConfidenceCount(Confidence Confidence, int Cells);

/// <summary>All charts.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="DefaultChart">The chart answered from unless another is named.</param>
/// <param name="Items">The charts.</param>
public sealed record ChartList(string DatasetVersion, string DefaultChart, IReadOnlyList<ChartSummary> Items);

/// <summary>One chart with every printed cell.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Chart">The chart.</param>
/// <param name="EndPoints">Its printed end points, by cone and rate.</param>
/// <param name="Sources">Ids of the sources.</param>
public sealed record ChartDetail(
    string DatasetVersion, [property: Flat] ChartSummary Chart, IReadOnlyList<ChartEndPoint> EndPoints, IReadOnlyList<string> Sources);

/// <summary>One printed cell of a chart.</summary>
/// <param name="Cone">The cone.</param>
/// <param name="RateCelsiusPerHour">Heating rate over the last 100 °C, °C/h; null where the chart states none.</param>
/// <param name="Celsius">End point as printed, °C.</param>
/// <param name="Fahrenheit">End point, °F.</param>
/// <param name="FahrenheitBasis">Whether the chart prints the °F figure, or it was converted or corrected.</param>
/// <param name="Confidence">How far the value can be trusted.</param>
/// <param name="Source">Id of the source.</param>
/// <param name="Note">Why an oddity stays as printed; null for an ordinary cell.</param>
public sealed record ChartEndPoint(
    string Cone,
    decimal? RateCelsiusPerHour,
    decimal Celsius,
    decimal Fahrenheit,
    FahrenheitBasis FahrenheitBasis,
    Confidence Confidence,
    string Source,
    string? Note)
{
    /// <summary>The cell among those of its chart: the path of its address below <c>cells</c>.</summary>
    public string Id => TableAddress.CellId(Cone, RateCelsiusPerHour);
}

/// <summary>The scale.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Note">How the scale runs.</param>
/// <param name="Items">Every cone that some chart prints, in the order in which they go down.</param>
public sealed record ConeList(string DatasetVersion, Message Note, IReadOnlyList<ConeListItem> Items);

/// <summary>A cone of the scale, with its end point on the chart that is answered from by default.</summary>
/// <param name="Cone">The cone.</param>
/// <param name="ConeKind">whole, half or seger-letter.</param>
/// <param name="WholeStep">Index among the 36 whole cones 022 … 14; null outside.</param>
/// <param name="EndPoint">End point on the default chart at its usual rate; null when that chart does not print the cone.</param>
/// <param name="Charts">The charts that print the cone.</param>
/// <param name="Confidence">How far the existence of the cone can be trusted.</param>
/// <param name="Sources">Ids of the sources.</param>
public sealed record ConeListItem(
    string Cone, string ConeKind, int? WholeStep, PrintedEndPoint? EndPoint,
    IReadOnlyList<string> Charts, Confidence Confidence, IReadOnlyList<string> Sources)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("cones", Cone);

    /// <summary>The path of the cone: its text.</summary>
    public string Id => Cone;

    /// <summary>The cone as one says it, which no table takes for a number.</summary>
    public string Name => "cone " + Cone;
}
