using System.Globalization;
using ConeService.Contract.Cones;

namespace ConeService.Api.Http;

/// <summary>The look-ups that answer in one line of plain text when asked to.</summary>
internal static class OneLine
{
    public const string MediaType = "text/plain";

    /// <summary>The answer as JSON, or as one line of text.</summary>
    public static IResult Choose<T>(HttpRequest request, T answer, Func<T, string> line) =>
        Negotiation.Choose(request, JsonBody.MediaType, MediaType) == MediaType
            ? PreparedBody.Text(line(answer) + "\n", MediaType, negotiated: true)
            : JsonBody.Cacheable(answer, negotiated: true);

    /// <summary><c>1222 °C (2232 °F)</c>; a computed value to whole degrees, as its uncertainty is more than two.</summary>
    public static string Of(EndPoint answer) => $"{Degrees(answer.Celsius)} °C ({Degrees(answer.Fahrenheit)} °F)";

    /// <summary><c>6 and 0.47 of the way to 7</c>.</summary>
    public static string Of(ConeReading answer) => answer.Reading.ToString();

    private static string Degrees(decimal value) => Math.Round(value, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);
}
