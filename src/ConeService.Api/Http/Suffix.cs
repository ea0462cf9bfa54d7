using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using Microsoft.Net.Http.Headers;

namespace ConeService.Api.Http;

/// <summary>
/// The representation asked for by the end of the path, for callers who can't send headers: <c>/v1/cones.csv</c> is <c>/v1/cones</c> with
/// <c>Accept: text/csv</c>. The suffix wins over the header.
/// </summary>
/// <param name="Text">The suffix with its dot.</param>
/// <param name="Path">The path as it was asked for.</param>
internal sealed record Suffix(string Text, PathString Path)
{
    /// <summary>Before routing: takes the suffix off the path and puts it into the Accept header.</summary>
    public static RequestDelegate Strip(RequestDelegate next) => context =>
    {
        if (Find(context.Request.Path.Value) is { } suffix)
        {
            var request = context.Request;
            context.Features.Set(new Suffix(suffix, request.Path));
            // Made, not converted: the conversion from text would decode the path a second time.
            request.Path = new PathString(request.Path.Value![..^suffix.Length]);
            if (Formats.MediaType(suffix) is { } type) request.Headers[HeaderNames.Accept] = type;
        }

        return next(context);
    };

    /// <summary>After routing: refuses a suffix that the address does not have.</summary>
    /// <exception cref="RefusedException">It does not.</exception>
    public static void Check(HttpContext context)
    {
        if (context.Features.Get<Suffix>() is not { } suffix || context.GetEndpoint() is not { } endpoint) return;
        var allowed = Formats.Suffixes(endpoint);
        // What has no format, such as the answer to a wrong method, has its own refusal.
        if (allowed.Count == 0 || allowed.Contains(suffix.Text, StringComparer.OrdinalIgnoreCase)) return;
        throw new RefusedException(new Finding(
            FindingCodes.NotAcceptable, "path", suffix.Path, Message.Of("http.suffix-not-available", ("suffix", suffix.Text)),
            Message.Verbatim(allowed), Message.Of("http.leave-suffix-out")));
    }

    // Letters after the last dot of a contract address. Ids hold words and hyphens, cones such as 05.5 and temperatures such as 1222.5C a
    // digit after their dot; no word of the package holds a dot.
    private static string? Find(string? path)
    {
        if (path is null || path.LastIndexOf('.') is var dot && (dot < 3 || path.Length - dot is < 3 or > 6)) return null;
        if (!path.StartsWith("/v1", StringComparison.OrdinalIgnoreCase) || path[3] is not ('/' or '.')) return null;
        foreach (var letter in path.AsSpan(dot + 1))
        {
            if (!char.IsAsciiLetter(letter)) return null;
        }

        return path[dot..];
    }
}
