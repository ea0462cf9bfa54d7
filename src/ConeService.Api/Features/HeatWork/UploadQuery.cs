using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Features.HeatWork;

/// <summary>Parameters of the query that go with an uploaded log: in JSON the same stands in the body.</summary>
internal static class UploadQuery
{
    /// <summary>Refuses them beside JSON, where nothing would read them.</summary>
    /// <param name="request">The request.</param>
    /// <param name="parameters">Those that go with an upload; others, such as the pin of the data, are left alone.</param>
    /// <exception cref="RefusedException">Some were sent.</exception>
    public static void RefuseBesideJson(HttpRequest request, IEnumerable<string> parameters)
    {
        var sent = request.Query.Where(q => parameters.Contains(q.Key, StringComparer.Ordinal)).ToList();
        if (sent.Count == 0) return;
        throw new RefusedException([.. sent.Select(q => new Finding(
            FindingCodes.UnknownParameter, q.Key, q.Value.ToString(), Message.Of("heat-work.query-with-json"),
            [Message.Of("heat-work.no-query-with-json")]))]);
    }
}
