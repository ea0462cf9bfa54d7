using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Datasets;
using ConeService.Contract.Quantities;
using ConeService.Data;

namespace ConeService.Firing.Cones;

/// <summary>The cells of a chart as answers tell them.</summary>
internal static class PrintedCells
{
    /// <summary>A cell that an answer was read or computed from.</summary>
    public static PrintedPoint Point(EndPointRow cell) =>
        new(cell.Chart, cell.Cone, cell.RateCelsiusPerHour, cell.Celsius, cell.Confidence, cell.Source, cell.Note);

    /// <summary>A cell as an end point of its cone.</summary>
    public static PrintedEndPoint EndPoint(EndPointRow cell) => new(
        cell.Chart,
        cell.RateCelsiusPerHour,
        cell.Celsius,
        Fahrenheit(cell),
        BasisOf(cell),
        Basis.Printed,
        cell.Confidence,
        cell.Source,
        cell.Note, TableAddress.OfCell(cell.Chart, cell.Cone, cell.RateCelsiusPerHour));

    /// <summary>A cell as an end point of its chart.</summary>
    public static ChartEndPoint OfChart(EndPointRow cell) => new(
        cell.Cone, cell.RateCelsiusPerHour, cell.Celsius, Fahrenheit(cell), BasisOf(cell), cell.Confidence, cell.Source, cell.Note);

    /// <summary>The end point, °F: as printed or corrected, else converted.</summary>
    public static decimal Fahrenheit(EndPointRow cell) => cell.Fahrenheit ?? Temperature.ToFahrenheit(cell.Celsius);

    /// <summary>Whether the chart prints the °F figure.</summary>
    public static FahrenheitBasis BasisOf(EndPointRow cell) => cell switch
    {
        { Fahrenheit: null } => FahrenheitBasis.Converted,
        { IsFahrenheitCorrected: true } => FahrenheitBasis.Corrected,
        _ => FahrenheitBasis.Printed,
    };
}
