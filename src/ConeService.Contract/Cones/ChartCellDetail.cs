using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Cones;

/// <summary>One printed cell of a chart, as it can be looked up in the print.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Name">The cell in words.</param>
/// <param name="Chart">The chart.</param>
/// <param name="Cone">The cone, as the chart prints it.</param>
/// <param name="RateCelsiusPerHour">Heating rate over the last 100 °C, °C/h; null where the chart states none.</param>
/// <param name="Celsius">End point as printed, °C.</param>
/// <param name="Fahrenheit">End point, °F.</param>
/// <param name="FahrenheitBasis">Whether the chart prints the °F figure, or it was converted or corrected.</param>
/// <param name="Confidence">How far the value can be trusted.</param>
/// <param name="Place">Where in its source it stands.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="CitedSources">The sources themselves.</param>
/// <param name="Note">Why an oddity stays as printed; null for an ordinary cell.</param>
public sealed record ChartCellDetail(
    string DatasetVersion,
    string Name,
    string Chart,
    string Cone,
    decimal? RateCelsiusPerHour,
    decimal Celsius,
    decimal Fahrenheit,
    FahrenheitBasis FahrenheitBasis,
    Confidence Confidence,
    Message Place,
    IReadOnlyList<string> Sources,
    IReadOnlyList<Source> CitedSources,
    string? Note)
{
    /// <summary>The cell among those of its chart: the cone, and the rate as it is printed or <c>unstated</c>.</summary>
    public string Id => TableAddress.CellId(Cone, RateCelsiusPerHour);

    /// <summary>Address of its row of the data package.</summary>
    public Address Row => TableAddress.Of("end-points", $"{Chart}{TableAddress.Between}{Id}");
}
