using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace ConeService.Api.Http.Reach;

/// <summary>
/// Says on every answer that any page may read it, whether or not the request named an origin: a shared cache may hand the answer to
/// a request without one to a page that needs the header.
/// </summary>
internal static class AnyOrigin
{
    /// <summary>What a script of another origin may read beside the usual headers.</summary>
    public static readonly string[] Exposed =
    [
        HeaderNames.ETag, HeaderNames.Link, HeaderNames.Allow, HeaderNames.ContentLanguage, HeaderNames.RetryAfter, "Deprecation", "Sunset",
        "RateLimit", "RateLimit-Policy",
    ];

    private static readonly StringValues Any = "*";
    private static readonly StringValues ExposedTogether = string.Join(',', Exposed);

    public static RequestDelegate Middleware(RequestDelegate next) => context =>
    {
        var headers = context.Response.Headers;
        headers.AccessControlAllowOrigin = Any;
        headers.AccessControlExposeHeaders = ExposedTogether;
        return next(context);
    };
}
