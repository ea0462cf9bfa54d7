using ConeService.Contract.Answers;
using ConeService.Contract.Equations;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Cones;

/// <summary>Where the °F figure comes from.</summary>
public enum FahrenheitBasis
{
    /// <summary>The chart prints it.</summary>
    Printed,

    /// <summary>Converted from the °C figure.</summary>
    Converted,

    /// <summary>Adopted against the print, whose figure is in error; /v1/dataset tells what is printed, and why.</summary>
    Corrected,
}

/// <summary>The end point of a cone at a heating rate on a chart.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Cone">The cone, as the chart prints it.</param>
/// <param name="Chart">The chart.</param>
/// <param name="RateCelsiusPerHour">The heating rate over the last 100 °C, °C/h; null where the chart states none.</param>
/// <param name="Celsius">The end point, °C; computed values to 0.0001.</param>
/// <param name="Fahrenheit">The end point, °F.</param>
/// <param name="FahrenheitBasis">Whether the chart prints the °F figure, or it was converted or corrected.</param>
/// <param name="SigmaCelsiusDifference">Standard uncertainty of the value as a statement about the chart's cones, K; null where the chart
/// states no rate (see notes).</param>
/// <param name="Basis">What the value rests on.</param>
/// <param name="Confidence">How far it can be trusted: the weakest of the cells in computedFrom; a computed value is derived at
/// best.</param>
/// <param name="ComputedFrom">The printed cells it was read or computed from, those of a borrowed curve last.</param>
/// <param name="BorrowedFrom">Whose curve was borrowed; null where none was.</param>
/// <param name="SameConeElsewhere">The same cone on other charts at the same rate, and wherever a chart prints the same
/// temperature at another rate.</param>
/// <param name="Notes">What a user of the value must know.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Assumed">Parameters that were left out, with what was taken.</param>
public sealed record EndPoint(
    string DatasetVersion,
    string Cone,
    string Chart,
    decimal? RateCelsiusPerHour,
    decimal Celsius,
    decimal Fahrenheit,
    FahrenheitBasis FahrenheitBasis,
    double? SigmaCelsiusDifference,
    Basis Basis,
    Confidence Confidence,
    IReadOnlyList<PrintedPoint> ComputedFrom,
    BorrowedShape? BorrowedFrom,
    IReadOnlyList<PrintedPoint> SameConeElsewhere,
    IReadOnlyList<Message> Notes,
    IReadOnlyList<string> Sources,
    IReadOnlyList<Assumption> Assumed) : IComputed
{
    Address IComputed.Explain => EquationIds.Address(Basis switch
    {
        Basis.Printed => EquationIds.EndPointPrinted,
        Basis.Borrowed => EquationIds.BorrowedCurve,
        _ => EquationIds.EndPointOfARamp,
    });
}
