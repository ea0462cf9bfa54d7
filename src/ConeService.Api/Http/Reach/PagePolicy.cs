using Microsoft.Extensions.Primitives;

namespace ConeService.Api.Http.Reach;

/// <summary>
/// What a browser may do with an answer (CSP, nosniff, referrer). Nothing of ours needs a script, but the page that shows the document;
/// cards may stand in a frame anywhere, nothing else may.
/// </summary>
internal static class PagePolicy
{
    private const string Nothing = "default-src 'none'; base-uri 'none'; form-action 'self'; ";
    private const string Style = "style-src 'unsafe-inline'; img-src 'self' data:; ";

    private static readonly StringValues Alone = Nothing + Style + "frame-ancestors 'none'";

    // A star stands for addresses of the network; a course page may lie on a disk.
    private static readonly StringValues Framed = Nothing + Style + "frame-ancestors * file:";

    // It shows cards as a course page would.
    private static readonly StringValues Preview = Nothing + Style + "frame-src 'self'; frame-ancestors 'none'";

    // Its scripts and styles are files of this service; it writes styles into the page, and asks the addresses that it shows.
    private static readonly StringValues Documentation =
        Nothing + "script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self'; connect-src 'self'; "
        + "frame-ancestors 'none'";

    private static readonly StringValues NoSniff = "nosniff";
    private static readonly StringValues NoReferrer = "no-referrer";

    public static RequestDelegate Middleware(RequestDelegate next) => context =>
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Of(context.Request.Path);
        headers.XContentTypeOptions = NoSniff;
        headers["Referrer-Policy"] = NoReferrer;
        return next(context);
    };

    // A refused card is a page in the same frame.
    private static StringValues Of(PathString path) =>
        path.StartsWithSegments("/cards", StringComparison.OrdinalIgnoreCase, out var card) ? card.Value is "" or "/" ? Preview : Framed
        : path.StartsWithSegments(Links.Documentation, StringComparison.OrdinalIgnoreCase) ? Documentation
        : Alone;
}
