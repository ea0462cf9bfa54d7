using ConeService.Api.Features.Cards;
using ConeService.Contract.Cones;
using ConeService.Firing;

namespace ConeService.Api.Features.Posters;

/// <summary>The wall chart: every cone at the three rates that the chart prints, °C and °F.</summary>
internal static class ChartPoster
{
    public static Poster Of(FiringReference reference)
    {
        var chart = reference.Cones.Chart(reference.Cones.DefaultChart).Chart;
        var rates = chart.RatesCelsiusPerHour.Order().Take(3).ToList();
        var columns = rates.Select(r => ChartCard.Points(reference.Cones, chart, $"{CardWords.Number(r)}C/h")).ToList();
        var cones = columns.SelectMany(c => c.Points).Select(p => p.Cone).Distinct()
            .OrderByDescending(c => reference.Cones.Read(c, "cone").Position).ToList();
        var sheet = new PosterSheet()
            .Say("The zero counts down: 06 is far cooler than 6. Say the zero, and write it.", "warn")
            .Table(
                $"{chart.Name}: where each cone goes down, hottest first", ["Cone", .. rates.SelectMany(Heads)],
                [.. cones.Select(cone => (string[])[cone, .. columns.SelectMany(c => Cells(c.Points, cone))])], style: "figures")
            .Say("The rate is that of the last 100 °C (180 °F). A hold at the top brings down hotter cones. A witness cone beside the "
                + "ware decides, not the meter. " + FromMemory.Of(reference), "small");
        return new("chart", "Cone chart", [sheet], [.. columns.SelectMany(c => c.Sources).Distinct()]);
    }

    private static string[] Heads(decimal rate) =>
        [$"{CardWords.Number(rate)} °C/h, °C", $"{CardWords.Number(rate * 9m / 5m)} °F/h, °F"];

    private static string[] Cells(IReadOnlyList<EndPoint> points, string cone) =>
        points.FirstOrDefault(p => p.Cone == cone) is { } point
            ? [CardWords.Whole(point.Celsius), CardWords.Whole(point.Fahrenheit)]
            : ["–", "–"];
}
