using System.Text.RegularExpressions;

namespace ConeService.Firing.Study.Searching;

/// <summary>Heating rates in what somebody asked: “150 C/h”, “270 °F per hour”, “2.5 C a minute”, and those without a unit.</summary>
internal static partial class RateWords
{
    /// <summary>The rates as parameters have them, such as 150C/h; each as it was asked, whether or not it can be computed with.</summary>
    public static IReadOnlyList<string> In(string asked) =>
        [.. Rates().Matches(asked).Select(Written).Distinct(StringComparer.Ordinal)];

    /// <summary>What was asked without its rates.</summary>
    public static string CutOut(string asked, IReadOnlyList<string> rates) => rates.Count == 0 ? asked : Rates().Replace(asked, " ");

    private static string Written(Match match)
    {
        var unit = match.Groups["unit"].Value;
        var time = match.Groups["time"].Value.StartsWith("h", StringComparison.OrdinalIgnoreCase) ? "h" : "min";
        return $"{match.Groups["number"].Value}{(unit.Length == 0 ? "" : char.ToUpperInvariant(unit[0]))}/{time}";
    }

    // “An hour” alone is a time; behind degrees it makes a rate of them.
    [GeneratedRegex(
        @"(?<![\w.,])(?<number>[0-9]+(?:[.,][0-9]+)*)\s*"
        + @"(?:(?:°|º|degrees?\b|deg\b)?\s*(?<unit>celsius|fahrenheit|kelvin|[CFK])\s*(?:/|\bper\b|\ban?\b)"
        + @"|(?:°|º|degrees?\b|deg\b)\s*(?:/|\bper\b|\ban?\b)|(?:/|\bper\b))"
        + @"\s*(?<time>hours?|hrs?|h|minutes?|mins?)\b",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Rates();
}
