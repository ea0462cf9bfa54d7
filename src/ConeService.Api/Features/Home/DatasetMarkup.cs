using System.Text.Json;
using System.Text.Json.Nodes;
using ConeService.Contract.Answers;
using ConeService.Data;

namespace ConeService.Api.Features.Home;

/// <summary>The data package in the words of schema.org, by which search engines for data sets find it: a block of data, no
/// script.</summary>
internal static class DatasetMarkup
{
    /// <summary>JSON-LD; its addresses are told from the page in which it stands.</summary>
    public static string Of(Dataset dataset)
    {
        var stem = $"/data/{dataset.BaseVersion}/{dataset.Name}-{dataset.BaseVersion}";
        return new JsonObject
        {
            ["@context"] = "https://schema.org",
            ["@type"] = "Dataset",
            ["name"] = dataset.Title,
            ["description"] = "End points of pyrometric cones as printed, heat work, clay bodies, glazes, colours, schedules, hazards and "
                + "limits for firing pottery; every row names its source and how far it can be trusted.",
            ["version"] = dataset.BaseVersion,
            ["license"] = "https://spdx.org/licenses/" + dataset.License,
            ["url"] = new Address("/v1/dataset").ToString(),
            ["isAccessibleForFree"] = true,
            ["creator"] = new JsonObject { ["@type"] = "Organization", ["name"] = "ConeService contributors" },
            ["keywords"] = new JsonArray("ceramics", "pottery", "firing", "pyrometric cones"),
            ["distribution"] = new JsonArray(
                Download(stem + ".zip", "application/zip"), Download(stem + ".json", "application/json"),
                Download($"/data/{dataset.BaseVersion}/datapackage.json", "application/json")),
            // What could end the block is escaped by the writer: < is \u003C.
        }.ToJsonString(new JsonSerializerOptions());
    }

    private static JsonObject Download(string path, string mediaType) => new()
    {
        ["@type"] = "DataDownload",
        ["contentUrl"] = new Address(path).ToString(),
        ["encodingFormat"] = mediaType,
    };
}
