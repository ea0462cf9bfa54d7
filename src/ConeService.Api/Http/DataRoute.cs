using ConeService.Api.Http.Problems;
using ConeService.Contract.Problems;

namespace ConeService.Api.Http;

/// <summary>Marks an address that answers from the data package: it may be pinned to a version of it.</summary>
internal sealed class DataRoute
{
    private DataRoute()
    {
    }

    /// <summary>Marks every address of a group, and says that what answers GET with JSON answers with a page too.</summary>
    public static T Mark<T>(T builder)
        where T : IEndpointConventionBuilder
    {
        builder.Finally(endpoint =>
        {
            endpoint.Metadata.Add(new DataRoute());
            endpoint.Metadata.Add(new ProducesResponseTypeMetadata(
                StatusCodes.Status409Conflict, typeof(Problem), [ProblemWriter.MediaType]));
            var isRead = endpoint.Metadata.OfType<HttpMethodMetadata>().Any(m => m.HttpMethods.Contains(HttpMethods.Get));
            if (isRead) AddPage(endpoint.Metadata);
        });
        return builder;
    }

    private static void AddPage(IList<object> metadata)
    {
        for (var i = 0; i < metadata.Count; i++)
        {
            if (metadata[i] is ProducesResponseTypeMetadata { StatusCode: StatusCodes.Status200OK } answer
                && answer.ContentTypes.Contains(JsonBody.MediaType) && !answer.ContentTypes.Contains(HtmlPage.MediaType))
            {
                metadata[i] = new ProducesResponseTypeMetadata(
                    answer.StatusCode, answer.Type, [.. answer.ContentTypes, HtmlPage.MediaType]);
            }
        }
    }
}
