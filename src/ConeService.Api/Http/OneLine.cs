using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Http;

/// <summary>The look-ups that answer in one line of plain text when asked to.</summary>
internal static class OneLine
{
    public const string MediaType = "text/plain";

    /// <summary>The answer as JSON, or as one line of text.</summary>
    /// <param name="request">The request.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="line">What stands in the body as text, with the end of its line where it has one.</param>
    public static IResult Choose<T>(HttpRequest request, T answer, Func<T, string> line) =>
        Negotiation.Choose(request, JsonBody.MediaType, MediaType) == MediaType
            ? PreparedBody.Text(line(answer), MediaType, negotiated: true)
            : JsonBody.Cacheable(answer);

    /// <summary>
    /// <c>1222 °C (2232 °F)</c>, or in one unit the bare number <c>1222</c> without the end of a line, as a cell of a spreadsheet
    /// takes it; a computed value to whole degrees, as its uncertainty is more than two.
    /// </summary>
    public static string Of(EndPoint answer, string? unit) => unit switch
    {
        "C" => Degrees(answer.Celsius),
        "F" => Degrees(answer.Fahrenheit),
        _ => $"{Degrees(answer.Celsius)} °C ({Degrees(answer.Fahrenheit)} °F)\n",
    };

    /// <summary>Reads the parameter <c>unit</c>: C, F or null.</summary>
    /// <exception cref="RefusedException">It is something else.</exception>
    public static string? Unit(string? unit) => unit switch
    {
        null => null,
        "C" or "c" => "C",
        "F" or "f" => "F",
        _ => throw new RefusedException(new Finding(
            FindingCodes.UnitsUnknown, "unit", unit, Message.Of("answers.unit-unknown", ("unit", unit)),
            [Message.Of("http.unit-of-one-number")])),
    };

    /// <summary><c>6 and 0.47 of the way to 7</c>.</summary>
    public static string Of(ConeReading answer) => answer.Reading + "\n";

    private static string Degrees(decimal value) => Math.Round(value, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);
}
