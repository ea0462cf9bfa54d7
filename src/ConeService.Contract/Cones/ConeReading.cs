using ConeService.Contract.Answers;
using ConeService.Contract.Equations;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Cones;

/// <summary>Which cone a steady ramp to a temperature puts down.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Celsius">The temperature, °C.</param>
/// <param name="Fahrenheit">The temperature, °F.</param>
/// <param name="RateCelsiusPerHour">The heating rate over the last 100 °C, °C/h; null where the chart states none.</param>
/// <param name="Chart">The chart.</param>
/// <param name="Reached">The hottest cone that is down together with all cooler ones of the chart.</param>
/// <param name="Next">The next cone of the chart; null when the hottest one is just down.</param>
/// <param name="Fraction">How far from the reached cone to the next, 0 to 0.9999 and never 1; null when there is no next cone. Never add it
/// to a cone number.</param>
/// <param name="MarginCelsiusDifference">How far the ramp went past the end point of the reached cone, in degrees of a 60 °C/h firing,
/// °C.</param>
/// <param name="MarginFahrenheitDifference">The same, °F.</param>
/// <param name="NextMarginCelsiusDifference">How far the ramp fell short of the next cone (negative), in degrees of a 60 °C/h firing,
/// °C.</param>
/// <param name="Reading">The result as one says it: “6 and 0.47 of the way to 7”.</param>
/// <param name="OutOfOrder">Cones that are down although a cooler one is not.</param>
/// <param name="LeftOut">Cones of the chart that could not be judged at this rate.</param>
/// <param name="Basis">The weaker basis of the two end points.</param>
/// <param name="Confidence">The weakest of the cells in computedFrom; what is computed is derived at best.</param>
/// <param name="ComputedFrom">The printed cells of the two cones, and those of a curve that one of them borrows.</param>
/// <param name="BorrowedFrom">Whose curve was borrowed; null where none was.</param>
/// <param name="Notes">What a user of the value must know.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Assumed">Parameters that were left out, with what was taken.</param>
public sealed record ConeReading(
    string DatasetVersion,
    decimal Celsius,
    decimal Fahrenheit,
    decimal? RateCelsiusPerHour,
    string Chart,
    string Reached,
    string? Next,
    double? Fraction,
    double MarginCelsiusDifference,
    double MarginFahrenheitDifference,
    double? NextMarginCelsiusDifference,
    Message Reading,
    IReadOnlyList<string> OutOfOrder,
    IReadOnlyList<string> LeftOut,
    Basis Basis,
    Confidence Confidence,
    IReadOnlyList<PrintedPoint> ComputedFrom,
    BorrowedShape? BorrowedFrom,
    IReadOnlyList<Message> Notes,
    IReadOnlyList<string> Sources,
    IReadOnlyList<Assumption> Assumed) : IComputed
{
    Address IComputed.Explain => EquationIds.Address(EquationIds.ConeReached);
}
