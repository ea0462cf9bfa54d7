using System.IO.Pipelines;
using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Features.HeatWork;

/// <summary>A request body of JSON, or an upload that is still to be read.</summary>
/// <param name="Value">The request; of an upload an empty one whose log comes by <paramref name="Upload"/>.</param>
/// <param name="Upload">The uploaded log; null for JSON.</param>
internal sealed record HeatWorkBody(HeatWorkRequest Value, PipeReader? Upload)
{
    /// <summary>Binds the parameter by the Content-Type header.</summary>
    public static async ValueTask<HeatWorkBody?> BindAsync(HttpContext context)
    {
        var request = context.Request;
        if (RequestContent.Choose(request, JsonBody.MediaType, Csv.MediaType) == Csv.MediaType)
        {
            return new(new() { Units = "C", Log = [] }, await WholeUpload.ReadAsync(request));
        }

        if (request.Query.Count > 0)
        {
            throw new RefusedException([.. request.Query.Select(q => new Finding(
                FindingCodes.UnknownParameter, q.Key, q.Value.ToString(), Message.Of("heat-work.query-with-json"),
                [Message.Of("heat-work.no-query-with-json")]))]);
        }

        return new(await JsonBody.ReadAsync<HeatWorkRequest>(request), null);
    }
}
