using System.Text.Json;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Http;

/// <summary>The recipes of the contributor guide, done: what should take rows takes rows.</summary>
public class DrillTests
{
    // An invented chart, printed at one rate; it only has to be found everywhere.
    private const string Chart = "drill-2026";
    private const string ChartRow = Chart + ",Drill chart,large,regular,yes,no,common-practice,common-practice,,,\n";
    private const string EndPoints =
        Chart + ",5,5,60,1190,,common-practice,common-practice,,60\n"
        + Chart + ",6,6,60,1217,,common-practice,common-practice,,60\n"
        + Chart + ",7,7,60,1239,,common-practice,common-practice,,60\n";

    [Fact]
    public async Task A_chart_is_rows_and_every_address_has_it()
    {
        using var package = new PackageCopy();
        package.Replace("charts.csv", "nbs-1926,Standard", ChartRow + "nbs-1926,Standard");
        package.Replace("end-points.csv", "\nnbs-1926,022,-22,20,", "\n" + EndPoints + "nbs-1926,022,-22,20,");
        using var host = new OwnHost(package.Directory);

        var charts = (await Json(host, "/v1/charts")).GetProperty("items").EnumerateArray();
        Assert.Contains(Chart, charts.Select(c => c.GetProperty("id").GetString()));
        Assert.Equal(3, (await Json(host, "/v1/charts/" + Chart)).GetProperty("endPoints").GetArrayLength());
        var printed = (await Json(host, "/v1/cones/6")).GetProperty("endPoints").EnumerateArray()
            .Single(p => p.GetProperty("chart").GetString() == Chart);
        Assert.Equal(1217, printed.GetProperty("celsius").GetInt32());
        Assert.Equal(1217, (await Json(host, $"/v1/cones/6/end-point?rate=60C/h&chart={Chart}")).GetProperty("celsius").GetInt32());
        var reached = await Json(host, $"/v1/temperatures/1217C/cone?rate=60C/h&chart={Chart}");
        Assert.StartsWith("6 and 0.00", reached.GetProperty("reading").GetString(), StringComparison.Ordinal);
        Assert.Contains("Drill chart", await host.Text("/cards/cone-6"), StringComparison.Ordinal);
        Assert.Equal(1217, (await Json(host, "/v1/conversions", $$"""{"lines":[{"cone":"6","rate":"60C/h","chart":"{{Chart}}"}]}"""))
            .GetProperty("lines")[0].GetProperty("endPoint").GetProperty("celsius").GetInt32());
        var firing = $$"""{"units":"C","chart":"{{Chart}}","segments":[{"rate":60,"target":1217}]}""";
        Assert.Equal(Chart, (await Json(host, "/v1/heat-work", firing)).GetProperty("chart").GetString());
        Assert.Equal(Chart, (await Json(host, "/v1/schedules/mid-range-glaze/fit", $$"""{"units":"C","chart":"{{Chart}}","cone":"6"}"""))
            .GetProperty("chart").GetString());
    }

    private static async Task<JsonElement> Json(OwnHost host, string url, string? body = null)
    {
        using var response = await host.Ask(url, null, body);
        return await Support.Api.Read(response, 200);
    }
}
