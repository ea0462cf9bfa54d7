using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using ConeService.Api.Features.Datasets;
using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Data;

namespace ConeService.Api.Features.Home;

/// <summary>The data package in the words of schema.org, by which search engines for data sets find it: a block of data, no
/// script.</summary>
internal static class DatasetMarkup
{
    /// <summary>JSON-LD; its addresses are told from the page in which it stands.</summary>
    public static string Of(Dataset dataset)
    {
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
            ["distribution"] = new JsonArray([.. DatasetFile.Downloads(dataset).Select(Distribution)]),
            // What could end the block is escaped by the writer: < is \u003C.
        }.ToJsonString(new JsonSerializerOptions());
    }

    private static JsonNode Distribution(Download download) => new JsonObject
    {
        ["@type"] = "DataDownload",
        ["name"] = download.Name,
        ["contentUrl"] = download.Href.ToString(),
        ["encodingFormat"] = download.MediaType,
        ["contentSize"] = download.Bytes.ToString(CultureInfo.InvariantCulture),
        ["sha256"] = download.Sha256,
    };
}
