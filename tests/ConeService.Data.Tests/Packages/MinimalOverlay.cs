using System.Text.Json.Nodes;

namespace ConeService.Data.Tests;

/// <summary>The least overlay that is valid: one source, one chart of its own with two cells.</summary>
internal static class MinimalOverlay
{
    public static InMemoryPackage Create(string name = "north-shed", string version = "2.1.0")
    {
        var package = new InMemoryPackage(name);
        var resources = new JsonArray();
        foreach (var table in new[] { "sources", "charts", "end-points" })
        {
            var described = InMemoryPackage.Table(JsonNode.Parse(Repository.Data("datapackage.json"))!, table);
            resources.Add(InMemoryPackage.DropLater(InMemoryPackage.Unsealed(described)));
        }

        package.Put("datapackage.json",
            new JsonObject { ["name"] = name, ["version"] = version, ["resources"] = resources }.ToJsonString());
        package.Put("sources.csv", $"""
            id,kind,citation,year,locator,rights,seen
            {name}-tests,measurement,Own firings,2024,,own,whole

            """);
        package.Put("charts.csv", $"""
            id,title,cone_form,composition,reduction_sensitive,bends_later,source,confidence,note
            {name}-chart,Own chart,large,regular,yes,no,{name}-tests,published,

            """);
        package.Put("end-points.csv", $"""
            chart,cone,rate_celsius_per_hour,celsius,fahrenheit,source,confidence,note
            {name}-chart,05,60,1030,1886,{name}-tests,published,
            {name}-chart,04,60,1060,1940,{name}-tests,published,

            """);
        return package;
    }
}
