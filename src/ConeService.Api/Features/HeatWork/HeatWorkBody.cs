using System.IO.Pipelines;
using ConeService.Api.Http;
using ConeService.Contract.HeatWork;

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

        UploadQuery.RefuseBesideJson(request, HeatWorkEndpoints.UploadParameters);
        return new(await JsonBody.ReadAsync<HeatWorkRequest>(request), null);
    }
}
