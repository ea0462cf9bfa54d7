using System.Globalization;
using System.Text;
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

    public static PreparedBody Render(ConeDescription cone, FiringReference reference)
    {
        var dataset = reference.Dataset;
        var titles = dataset.Charts.ToDictionary(c => c.Id, c => c.Title);
        var body = new StringBuilder()
            .AppendLine(CultureInfo.InvariantCulture, $"<h1>Cone {HtmlPage.Encode(cone.Cone)}</h1>");
        if (cone.MixUp is { } mixUp)
        {
            body.AppendLine(CultureInfo.InvariantCulture,
                $"<p><strong>Not cone {HtmlPage.Encode(mixUp.Cone)}.</strong> {HtmlPage.Encode(mixUp.Message.ToString())}</p>");
        }

        if (cone.EndPoints.FirstOrDefault(p => p.Chart == reference.Cones.DefaultChart && p.RateCelsiusPerHour == LeadRate) is { } lead)
        {
            body.AppendLine(CultureInfo.InvariantCulture,
                $"<p class=\"lead\"><strong>{lead.Celsius} °C ({Whole(lead.Fahrenheit)} °F)</strong> "
                + $"at {Rate(lead.RateCelsiusPerHour)}, {HtmlPage.Encode(titles[lead.Chart])}.</p>");
        }

        body.AppendLine("<div class=\"wide\"><table><caption>Where it goes down, chart by chart</caption>")
            .Append("<thead><tr><th scope=\"col\">Chart</th><th scope=\"col\" class=\"n\">Heating rate</th>")
            .Append("<th scope=\"col\" class=\"n\">°C</th><th scope=\"col\" class=\"n\">°F</th>")
            .AppendLine("<th scope=\"col\">How sure</th></tr></thead>");
        // The chart that answers by default comes first; the others as the package orders them.
        foreach (var chart in cone.EndPoints.GroupBy(p => p.Chart).OrderByDescending(g => g.Key == reference.Cones.DefaultChart))
        {
            body.Append(CultureInfo.InvariantCulture,
                $"<tbody><tr><th scope=\"rowgroup\" rowspan=\"{chart.Count()}\">{HtmlPage.Encode(titles[chart.Key])}</th>");
            body.AppendJoin("<tr>", chart.Select(p => string.Create(CultureInfo.InvariantCulture,
                $"<td class=\"n\">{Rate(p.RateCelsiusPerHour)}</td><td class=\"n\">{p.Celsius}</td>"
                + $"<td class=\"n\">{Whole(p.Fahrenheit)}</td><td>{Trust(p.Confidence)}</td></tr>\n")));
            body.AppendLine("</tbody>");
        }

        body.AppendLine("</table></div>");
        var sources = string.Join("; ", cone.Sources.Select(id => dataset.Sources.First(s => s.Id == id).Citation));
        body.Append("<p>A figure for a cone means something only with its chart and its heating rate over the last 100 °C. ")
            .Append("A witness cone beside the ware decides, not the meter.</p>\n")
            .AppendLine(CultureInfo.InvariantCulture, $"<p>{HtmlPage.Encode(FromMemory.Of(reference))}</p>")
            .Append(CultureInfo.InvariantCulture, $"<p class=\"small\">Source: {HtmlPage.Encode(sources)}. ")
            .Append(CultureInfo.InvariantCulture, $"Data package {HtmlPage.Encode(cone.DatasetVersion)}, ")
            .AppendLine(CultureInfo.InvariantCulture, $"{HtmlPage.Encode(dataset.License)}.</p>");
        return HtmlPage.Render("Cone " + cone.Cone, body.ToString());
    }

    private static string Rate(decimal? rate) => rate is { } r ? $"{r} °C/h ({r * 9m / 5m:0.#} °F/h)" : "not stated";

    private static string Whole(decimal value) => Math.Round(value, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);

    private static string Trust(Confidence confidence) => confidence switch
    {
        Confidence.Corroborated => "seen in two places",
        Confidence.Published => "seen once",
        Confidence.FromMemory => "from memory",
        Confidence.CommonPractice => "common practice",
        Confidence.Derived => "computed",
        _ => "estimate",
    };
}
