using System.ComponentModel.DataAnnotations;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Quantities;
using ConeService.Contract.Requests;

namespace ConeService.Contract.Conversions;

/// <summary>Up to 1,000 conversions between cones and temperatures.</summary>
/// <param name="Lines">The lines, each with a cone or a temperature.</param>
/// <param name="Units">
/// C or F: the unit of temperatures and rates (per hour) sent as bare numbers; not needed when each carries its unit as text.
/// </param>
[Needs(nameof(Lines))]
public sealed record ConversionRequest(
    [property: Items(1, ConversionCheck.MostLines)] IReadOnlyList<ConversionLine?>? Lines,
    [property: AllowedValues("C", "F")] string? Units = null);

/// <summary>One conversion: a cone is answered with its end point, a temperature with the cone reached.</summary>
/// <param name="Cone">The cone, as text.</param>
/// <param name="Temperature">The temperature, text with its unit (1222C, 2232F, 1495K), or a number in the request's units.</param>
/// <param name="Rate">
/// The heating rate over the last 100 °C, text with its unit (60C/h, 108F/h, 1C/min), or a number in the request's units per
/// hour; may be left out.
/// </param>
/// <param name="Chart">The chart; may be left out.</param>
public sealed record ConversionLine(
    [property: RegularExpression(ConeSpelling.Pattern)] SentText Cone = default,
    [property: SentAs(SentForm.Quantity), RegularExpression(QuantityText.Pattern)] SentText Temperature = default,
    [property: SentAs(SentForm.Quantity), RegularExpression(QuantityText.Pattern)] SentText Rate = default,
    SentText Chart = default);
