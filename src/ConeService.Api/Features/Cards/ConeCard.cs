using System.Globalization;
using ConeService.Api.Http;
using ConeService.Contract.Cones;
using ConeService.Data;
using ConeService.Firing;

namespace ConeService.Api.Features.Cards;

/// <summary>The end points of one cone on every chart, for a course page.</summary>
internal static class ConeCard
{
    // The middle rate of the default chart, the one most often quoted, °C/h.
    private const decimal LeadRate = 60m;

    public static Card Of(CardAsk ask)
    {
        var reference = ask.Reference;
        var cone = reference.Cones.Describe(reference.Cones.Read(ask.Id, "card"));
        return new(
            "cone-" + cone.Cone, "Cone " + cone.Cone, $"Where cone {cone.Cone} goes down on each chart, at which heating rate.",
            body => Write(body, cone, ask), cone.Sources);
    }

    /// <summary>The same card as the page of the answer on a cone.</summary>
    public static PreparedBody Page(Cone cone, FiringReference reference)
    {
        var look = new CardLook(CardSize.Full, CardTheme.Auto, IsChosen: false);
        var card = Of(new(reference, cone.ToString(), new Dictionary<string, string>(), look));
        return PreparedBody.Text(CardPage.Render(card, look, reference, null), HtmlPage.MediaType);
    }

    private static void Write(CardBody body, ConeDescription cone, CardAsk ask)
    {
        var reference = ask.Reference;
        var titles = reference.Dataset.Charts.ToDictionary(c => c.Id, c => c.Title);
        if (cone.EndPoints.FirstOrDefault(p => p.Chart == reference.Cones.DefaultChart && p.RateCelsiusPerHour == LeadRate) is { } lead)
        {
            var figure = $"{CardWords.Number(lead.Celsius)} °C ({CardWords.Whole(lead.Fahrenheit)} °F)";
            var rest = $" at {CardWords.Rate(lead.RateCelsiusPerHour)}, {titles[lead.Chart]}.";
            body.Say($"<strong>{figure}</strong>{HtmlPage.Encode(rest)}", figure + rest, "lead", needed: true);
        }

        if (cone.MixUp is { } mixUp)
        {
            var not = $"Not cone {mixUp.Cone}. ";
            body.Say($"<strong>{HtmlPage.Encode(not)}</strong>{HtmlPage.Encode(mixUp.Message)}", not + mixUp.Message, "warn", needed: true);
        }

        if (cone.Previous is not null || cone.Next is not null)
        {
            string Link(string? other, string text) => other is null ? "" : CardWords.Link(ask.Look, "cone-" + other, text + other);
            var (cooler, hotter) = (Link(cone.Previous, "Cooler: cone "), Link(cone.Next, "Hotter: cone "));
            body.Say(string.Join(" · ", new[] { cooler, hotter }.Where(t => t.Length > 0)), "Cooler: cone 00 · Hotter: cone 00", "more");
        }

        // The chart that answers by default comes first; the others as the package orders them.
        body.Table(
            "Where it goes down, chart by chart",
            ((Cell[])["Heating rate", Cell.Number("°C"), Cell.Number("°F"), "How sure"])[..(ask.Look.IsShort ? 3 : 4)],
            [.. cone.EndPoints.GroupBy(p => p.Chart).OrderByDescending(g => g.Key == reference.Cones.DefaultChart)
                .Select(g => (titles[g.Key], (IReadOnlyList<Cell[]>)[.. g.Select(p => Row(p, ask.Look.IsShort))]))]);
        body.Say(
            "A figure for a cone means something only with its chart and its heating rate over the last 100 °C. "
            + "A witness cone beside the ware decides, not the meter.");
        body.Say(FromMemory.Of(reference), "small");
    }

    // A short card has no room for a column that mostly says the same: it marks what was not seen in print.
    private static Cell[] Row(PrintedEndPoint p, bool isShort)
    {
        var (celsius, fahrenheit) = (p.Celsius.ToString(CultureInfo.InvariantCulture), Cell.Number(CardWords.Whole(p.Fahrenheit)));
        if (!isShort) return [CardWords.Rate(p.RateCelsiusPerHour), Cell.Number(celsius), fahrenheit, CardWords.Of(p.Confidence)];
        var rate = p.RateCelsiusPerHour is { } r ? CardWords.Number(r) + " °C/h" : "rate not stated";
        return [rate, Cell.Number(celsius + (p.Confidence == Confidence.FromMemory ? " (from memory)" : "")), fahrenheit];
    }
}
