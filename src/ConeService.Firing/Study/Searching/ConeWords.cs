using System.Globalization;
using System.Text.RegularExpressions;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Study;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Study.Searching;

/// <summary>Cones and temperatures in what somebody asked, with an answer: “hotter 012 or 06”, “cone 04”, “1222C”.</summary>
internal static partial class ConeWords
{
    private const int HottestUnmarked = 14;

    /// <summary>The answer in a sentence, and what leads further; nothing when neither cone nor temperature is asked about.</summary>
    public static (Message? Answer, IReadOnlyList<SearchHit> Hits) Of(string asked, ConeReference cones)
    {
        var found = Cones(asked).Select(c => Ask(() => cones.EndPoint(c))).OfType<EndPoint>().Take(2).ToList();
        if (found.Count > 0) return (Tell(found), [.. found.Select(Hit)]);
        if (Degrees().Match(asked) is { Success: true } match
            && Ask(() => cones.Reading(match.Groups["number"].Value + match.Groups["unit"].Value)) is { } reading)
        {
            var text = match.Groups["number"].Value + match.Groups["unit"].Value.ToUpperInvariant();
            var told = Message.Of(
                "search.temperature",
                ("celsius", Math.Round(reading.Celsius)), ("fahrenheit", Math.Round(reading.Fahrenheit)), ("cone", reading.Reached),
                ("next", reading.Next ?? ""), ("stands", reading.Next is null ? "none" : "one"), ("rate", reading.RateCelsiusPerHour),
                ("chart", reading.Chart));
            return (told, [new(text, text, "temperatures", told.ToString(), new Address($"/v1/temperatures/{text}/cone"))]);
        }

        return (null, []);
    }

    /// <summary>Whether a word is a cone or a number with its unit, which no text need hold.</summary>
    public static bool IsNumber(string word) => char.IsAsciiDigit(word[0]) || word is "con" or "hot" or "cool" or "temperatur" or "degre";

    private static Message Tell(List<EndPoint> found)
    {
        var (first, second) = (found[0], found[^1]);
        if (found.Count == 1) return Message.Of("search.cone", Of(first, ""));
        var (hotter, cooler) = first.Celsius > second.Celsius ? (first, second) : (second, first);
        return Message.Of("search.hotter", [.. Of(hotter, "hotter"), .. Of(cooler, "cooler")]);
    }

    private static (string, object?)[] Of(EndPoint point, string which) =>
    [
        (Named(which, "cone"), point.Cone),
        (Named(which, "celsius"), point.Celsius),
        (Named(which, "fahrenheit"), Math.Round(point.Fahrenheit)),
        .. which == "cooler" ? [] : ((string, object?)[])[("rate", point.RateCelsiusPerHour), ("chart", point.Chart)],
    ];

    private static string Named(string which, string name) => which.Length == 0 ? name : which + char.ToUpperInvariant(name[0]) + name[1..];

    private static SearchHit Hit(EndPoint point) => new(
        point.Cone, "Cone " + point.Cone, "cones",
        Message.Of("search.cone", Of(point, "")).ToString(), new Address("/v1/cones/" + point.Cone));

    private static T? Ask<T>(Func<T> question)
        where T : class
    {
        try
        {
            return question();
        }
        catch (RefusedException)
        {
            // What is no cone of the chart, or no temperature of the scale, is a number among other words.
            return null;
        }
    }

    private static IEnumerable<string> Cones(string asked)
    {
        var matches = Numbers().Matches(asked).ToList();
        // A bare number is a cone only in company: beside the word, beside a cone with its zero, or where two are compared.
        var company = Company().IsMatch(asked) || matches.Any(m => m.Groups["zero"].Success);
        return matches
            .Where(m => m.Groups["zero"].Success || (company && Number(m) <= HottestUnmarked))
            .Select(m => (m.Groups["zero"].Success ? "0" : "") + m.Groups["number"].Value)
            .Distinct(StringComparer.Ordinal);
    }

    private static decimal Number(Match match) =>
        decimal.Parse(match.Groups["number"].ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"(?<![\w.,])(?<zero>[0oO])?(?<number>[1-9][0-9]?(?:\.5)?)(?![\w,]|\.\d)(?!\s*(?:°|%|degrees?\b|[CF]\b|hours?\b|h\b|min))",
        RegexOptions.CultureInvariant)]
    private static partial Regex Numbers();

    [GeneratedRegex(
        @"\bcones?\b|[\^Δ∆△]|\b(?:hotter|cooler|colder|higher|lower|versus|vs)\b",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Company();

    [GeneratedRegex(
        @"(?<![\w.,])(?<number>[0-9]{2,4})\s*(?:°\s*|degrees?\s+)?(?<unit>[CF])\b",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Degrees();
}
