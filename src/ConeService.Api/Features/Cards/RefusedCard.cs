using System.Text;
using ConeService.Api.Http;

namespace ConeService.Api.Features.Cards;

/// <summary>A card that tells what was wrong with its question; never kept.</summary>
/// <param name="page">The page.</param>
/// <param name="status">The status.</param>
internal sealed class RefusedCard(string page, int status) : IResult
{
    public Task ExecuteAsync(HttpContext httpContext)
    {
        var response = httpContext.Response;
        Links.Describe(httpContext);
        response.StatusCode = status;
        response.ContentType = HtmlPage.MediaType + "; charset=utf-8";
        response.Headers.CacheControl = "no-store";
        return HttpMethods.IsHead(httpContext.Request.Method)
            ? Task.CompletedTask
            : response.Body.WriteAsync(Encoding.UTF8.GetBytes(page)).AsTask();
    }
}
