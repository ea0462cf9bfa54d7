using System.Globalization;
using System.Text.RegularExpressions;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Quantities;
using ConeService.Contract.Study;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Study.Searching;

/// <summary>
/// Cones, temperatures and heating rates in what somebody asked, with an answer: “hotter 012 or 06”, “cone 04”, “1222C”, “cone 6 at
/// 150 C/h”. A rate that is stated is the rate that is answered for; one that can't be read is told, and nothing is answered beside it.
/// </summary>
internal static partial class ConeWords
{
    private const int HottestUnmarked = 14;
    private const int MostCones = 6;

    // What stands beside a cone or a number: its unit and the words that join them.
    private static readonly HashSet<string> Units = [.. (
        "cone cones hot hotter cool cooler temperature degree degrees c f k celsius fahrenheit kelvin per h hr hrs hour hours min mins "
        + "minute minutes rate").Split(' ').Select(SearchWords.Stem)];

    /// <summary>The answer in a sentence, and what leads further; nothing when neither cone nor temperature is asked about.</summary>
    public static (Message? Answer, IReadOnlyList<SearchHit> Hits) Of(string asked, ConeReference cones)
    {
        // A rate is cut out before cones are looked for: its number is none.
        var rates = RateWords.In(asked);
        var rest = RateWords.CutOut(asked, rates);
        return rates switch
        {
            [] => Answer(rest, null, cones),
            [var rate] => HeatingRate.TryParse(rate, out _, out var wrong) ? Answer(rest, rate, cones) : Untold(rest, cones, Told(wrong!)),
            _ => Untold(rest, cones, Message.Of("search.rates", ("first", rates[0]), ("second", rates[1]))),
        };
    }

    /// <summary>Whether a word is a cone, a number or a unit, which no text need hold.</summary>
    public static bool IsNumber(string word) => Units.Contains(word) || char.IsAsciiDigit(word[0])
        || (word.Length > 1 && word[0] is 'o' or 'δ' && char.IsAsciiDigit(word[1]));

    private static (Message? Answer, IReadOnlyList<SearchHit> Hits) Answer(string asked, string? rate, ConeReference cones)
    {
        var refused = new List<Finding>();
        var found = Cones(asked).Select(c => Ask(() => cones.EndPoint(c, rate), refused)).OfType<EndPoint>().Take(MostCones).ToList();
        if (found.Count > 0) return (Message.Sentences([Tell(found), .. refused.Select(Told)]), [.. found.Select(Hit)]);
        if (Degrees().Match(asked) is { Success: true } match)
        {
            var text = match.Groups["number"].Value + match.Groups["unit"].Value.ToUpperInvariant();
            if (Ask(() => cones.Reading(text, rate), refused) is { } reading) return (Tell(reading, text), [Hit(reading, text, rate)]);
            // What is no temperature of the scale is a number among other words, unless a rate says what it is for.
            return (rate is null ? null : Message.Sentences(refused.Select(Told)), []);
        }

        if (WithoutUnit(asked) is { } number) return EitherUnit(number, rate, cones);
        if (Called().Match(asked) is { Success: true } called
            && Ask(() => cones.EndPoint(called.Groups["cone"].Value, rate), refused) is { } point) return (Tell([point]), [Hit(point)]);
        return refused.Count == 0 ? (null, []) : (Message.Sentences(refused.Select(Told)), [.. Near(refused, cones)]);
    }

    // Without a rate that can be read there is no figure: an answer at another rate would be taken for the one that was asked.
    private static (Message? Answer, IReadOnlyList<SearchHit> Hits) Untold(string asked, ConeReference cones, Message why)
    {
        var named = Cones(asked).Select(c => Ask(() => cones.EndPoint(c), [])).OfType<EndPoint>().Take(MostCones);
        var links = named.Select(c => Link(c.Cone)).ToList();
        return links.Count > 0 || Degrees().IsMatch(asked) || WithoutUnit(asked) is not null || Called().IsMatch(asked)
            ? (why, links) : (null, []);
    }

    // A temperature without its unit is never guessed: both answers are told.
    private static (Message? Answer, IReadOnlyList<SearchHit> Hits) EitherUnit(string number, string? rate, ConeReference cones)
    {
        var told = new List<Message> { Message.Of("quantities.temperature-unit-missing", ("text", number)) };
        var hits = new List<SearchHit>();
        foreach (var text in (string[])[number + "C", number + "F"])
        {
            var refused = new List<Finding>();
            var reading = Ask(() => cones.Reading(text, rate), refused);
            var answer = reading is null ? Message.Sentences(refused.Select(f => f.Message)) : Tell(reading, text);
            told.Add(Message.Of("search.as-unit", ("text", text), ("told", answer)));
            if (reading is not null) hits.Add(Hit(reading, text, rate));
        }

        return hits.Count == 0 ? (null, []) : (Message.Sentences(told), hits);
    }

    private static Message Tell(List<EndPoint> found)
    {
        if (found.Count == 1) return Message.Of("search.cone", Of(found[0], ""));
        if (found.Count > 2) return Message.Sentences(found.OrderBy(f => f.Celsius).Select(f => Message.Of("search.cone", Of(f, ""))));
        var (first, second) = (found[0], found[^1]);
        var (hotter, cooler) = first.Celsius > second.Celsius ? (first, second) : (second, first);
        return Message.Of("search.hotter", [.. Of(hotter, "hotter"), .. Of(cooler, "cooler")]);
    }

    // The figure as it was asked; only the other unit is rounded.
    private static Message Tell(ConeReading reading, string text) => Message.Of(
        "search.temperature",
        ("celsius", text[^1] == 'C' ? reading.Celsius : Math.Round(reading.Celsius)),
        ("fahrenheit", text[^1] == 'F' ? reading.Fahrenheit : Math.Round(reading.Fahrenheit)), ("cone", reading.Reached),
        ("next", reading.Next ?? ""), ("stands", reading.Next is null ? "none" : "one"), ("rate", reading.RateCelsiusPerHour),
        ("chart", reading.Chart));

    private static Message Told(Finding finding) => Message.Sentences([
        finding.Message,
        .. finding.Allowed.Count == 0 ? [] : (Message[])[Message.Of("http.allowed", ("allowed", finding.Allowed))],
        .. finding.LikelyMistake is { } mistake ? (Message[])[mistake] : [],
    ]);

    private static (string, object?)[] Of(EndPoint point, string which) =>
    [
        (Named(which, "cone"), point.Cone),
        (Named(which, "celsius"), point.Celsius),
        (Named(which, "fahrenheit"), Math.Round(point.Fahrenheit)),
        .. which == "cooler" ? [] : ((string, object?)[])[("rate", point.RateCelsiusPerHour), ("chart", point.Chart)],
    ];

    private static string Named(string which, string name) => which.Length == 0 ? name : which + char.ToUpperInvariant(name[0]) + name[1..];

    private static SearchHit Hit(EndPoint point) => Link(point.Cone) with { Text = Message.Of("search.cone", Of(point, "")).ToString() };

    private static SearchHit Link(string cone) => new(cone, "Cone " + cone, "cones", null, new Address("/v1/cones/" + cone));

    private static SearchHit Hit(ConeReading reading, string text, string? rate) => new(
        text, text, "temperatures", Tell(reading, text).ToString(),
        new Address($"/v1/temperatures/{text}/cone" + (rate is null ? "" : "?rate=" + rate)));

    private static IEnumerable<SearchHit> Near(List<Finding> refused, ConeReference cones)
    {
        var known = cones.List().Items.Select(c => c.Cone).ToHashSet(StringComparer.Ordinal);
        return refused.SelectMany(f => f.Allowed).Select(a => a.ToString()).Where(known.Contains).Distinct().Select(Link);
    }

    private static T? Ask<T>(Func<T> question, List<Finding> refused)
        where T : class
    {
        try
        {
            return question();
        }
        catch (RefusedException wrong)
        {
            refused.AddRange(wrong.Findings);
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

    private static string? WithoutUnit(string asked) =>
        Unitless().Match(asked) is { Success: true } match ? match.Groups["number"].Value : null;

    [GeneratedRegex(
        @"(?<![\w.,-[Δ∆△]])(?<zero>[0oO])?(?<number>[1-9][0-9]?(?:\.5)?)(?!\w|[.,]\d)(?!\s*(?:°|%|degrees?\b|[CFK]\b|hours?\b|h\b|min))",
        RegexOptions.CultureInvariant)]
    private static partial Regex Numbers();

    [GeneratedRegex(
        @"\bcones?\b|[\^Δ∆△]|\b(?:hotter|cooler|colder|higher|lower|versus|vs)\b",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Company();

    [GeneratedRegex(
        @"(?<![\w.,])(?<number>[0-9]{2,4}(?:\.[0-9]{1,4})?)\s*(?:°\s*|degrees?\s+)?(?<unit>[CFK])(?:elsius|ahrenheit|elvin)?\b",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Degrees();

    // Three or four figures that stand alone, are called degrees, or are asked a cone for.
    [GeneratedRegex(
        @"^\s*(?<number>[0-9]{3,4}(?:\.[0-9]{1,4})?)\s*\??\s*$"
        + @"|(?<![\w.,])(?<number>[0-9]{3,4}(?:\.[0-9]{1,4})?)\s*(?:°|degrees?\b)"
        + @"|\bcones?\b.*(?<![\w.,])(?<number>[0-9]{3,4}(?:\.[0-9]{1,4})?)(?![\w,]|\.\d)",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Unitless();

    // What is called a cone and is none of those that are answered: there is no cone 0, and no cone 99.
    [GeneratedRegex(
        @"(?:\bcone\s*|[\^Δ∆△]\s*)(?<cone>[-−]?[0o]*[0-9]{1,3}(?:\.[0-9]+)?)(?![\w,]|\.\d)"
        + @"(?!\s*(?:°|%|degrees?\b|[CFK]\b|hours?\b|h\b|min))",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Called();
}
