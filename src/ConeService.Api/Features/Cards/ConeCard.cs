using System.Globalization;
using System.Text;
using ConeService.Api.Http;
using ConeService.Data;
using ConeService.Firing.Cones.Answers;

namespace ConeService.Api.Features.Cards;

/// <summary>The end points of one cone on every chart, for a course page.</summary>
internal static class ConeCard
{
    public static PreparedBody Render(ConeDescription cone, Dataset dataset)
    {
        var titles = dataset.Charts.ToDictionary(c => c.Id, c => c.Title);
        var body = new StringBuilder()
            .AppendLine(CultureInfo.InvariantCulture, $"<h1>Cone {HtmlPage.Encode(cone.Cone)}</h1>");
        if (cone.MixUp is { } mixUp)
        {
            body.AppendLine(CultureInfo.InvariantCulture, $"<p><strong>Not cone {HtmlPage.Encode(mixUp.Cone)}.</strong> {HtmlPage.Encode(mixUp.Message)}</p>");
        }

        body.AppendLine("<div class=\"wide\"><table><caption>Where it goes down</caption>")
            .AppendLine("<thead><tr><th scope=\"col\">Chart</th><th scope=\"col\" class=\"n\">Heating rate</th><th scope=\"col\" class=\"n\">°C</th><th scope=\"col\" class=\"n\">°F</th><th scope=\"col\">How sure</th></tr></thead><tbody>");
        foreach (var point in cone.EndPoints)
        {
            body.AppendLine(CultureInfo.InvariantCulture, $"""
                <tr><th scope="row">{HtmlPage.Encode(titles[point.Chart])}</th><td class="n">{Rate(point.RateCelsiusPerHour)}</td><td class="n">{point.Celsius}</td><td class="n">{Math.Round(point.Fahrenheit, MidpointRounding.AwayFromZero)}</td><td>{Words(point.Confidence)}</td></tr>
                """);
        }

        body.AppendLine("</tbody></table></div>");
        body.AppendLine(CultureInfo.InvariantCulture, $"""
            <p>A figure for a cone means something only with its chart and its heating rate over the last 100 °C. A witness cone beside the ware decides, not the meter.</p>
            <p class="small">Source: {HtmlPage.Encode(string.Join("; ", cone.Sources.Select(id => dataset.Sources.First(s => s.Id == id).Citation)))}. Data package {HtmlPage.Encode(cone.DatasetVersion)}, {HtmlPage.Encode(dataset.License)}.</p>
            """);
        return HtmlPage.Render("Cone " + cone.Cone, body.ToString());
    }

    private static string Rate(decimal? rate) => rate is { } r ? $"{r} °C/h" : "not stated";

    private static string Words(Confidence confidence) => confidence switch
    {
        Confidence.Corroborated => "seen in two places",
        Confidence.Published => "seen once",
        Confidence.FromMemory => "from memory",
        Confidence.CommonPractice => "common practice",
        Confidence.Derived => "computed",
        _ => "estimate",
    };
}
