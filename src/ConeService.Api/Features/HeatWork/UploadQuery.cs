using ConeService.Api.Http.Problems;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Features.HeatWork;

/// <summary>Parameters of the query that go with an uploaded log: in JSON the same stands in the body.</summary>
internal static class UploadQuery
{
    /// <summary>Tells them beside JSON, where nothing would read them, among the mistakes of the request.</summary>
    /// <param name="request">The request.</param>
    /// <param name="parameters">Those that go with an upload; others, such as the pin of the data, are left alone.</param>
    public static void RefuseBesideJson(HttpRequest request, IEnumerable<string> parameters)
    {
        foreach (var (name, value) in request.Query.Where(q => parameters.Contains(q.Key, StringComparer.Ordinal)))
        {
            Mistakes.Add(request.HttpContext, new(
                FindingCodes.UnknownParameter, name, value.ToString(), Message.Of("heat-work.query-with-json"),
                [Message.Of("heat-work.no-query-with-json")]));
        }
    }
}
