using ConeService.Api.Http.Reach;
using ConeService.Contract.Texts;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace ConeService.Api.Http;

/// <summary>In which language an answer is told: the one that the Accept-Language header likes best of the package's, else
/// English.</summary>
internal static class Language
{
    /// <summary>
    /// Sets the language of a request. Ordinary requests pay nothing: English from the embedded package is spoken unless
    /// something else is said, so the flow is touched only for another language, for a package with sentences of its own, or where
    /// addresses have a prefix.
    /// </summary>
    public static RequestDelegate Middleware(RequestDelegate next, SnapshotHolder snapshots, ServiceAddress address) => context =>
    {
        var book = snapshots.Current.Messages;
        var wanted = context.Request.Headers.AcceptLanguage;
        var language = wanted.Count == 0 || book.Languages.Count == 1 ? MessageBook.English : Choose(wanted, book.Languages);
        var root = address.Prefix(context.Request);
        return language == MessageBook.English && book == MessageBook.Embedded && root.Length == 0
            ? next(context)
            : Spoken(context, next, new(book, language) { Root = root });
    };

    /// <summary>The language for a header: a range is cut back, subtag by subtag, until a language has that name (RFC 4647, 3.4).</summary>
    /// <param name="wanted">The header; what can't be read of it is passed over.</param>
    /// <param name="languages">The languages there are, English first.</param>
    public static string Choose(StringValues wanted, IReadOnlyList<string> languages)
    {
        if (!StringWithQualityHeaderValue.TryParseList(wanted, out var ranges)) return MessageBook.English;
        return ranges.Where(r => r.Quality is not 0).OrderByDescending(r => r.Quality ?? 1)
            .Select(r => Find(r.Value.ToString(), languages)).FirstOrDefault(l => l is not null) ?? MessageBook.English;
    }

    /// <summary>Says of an answer in which language it is, and that it may be had in others.</summary>
    public static void Describe(IHeaderDictionary headers, Speech speech)
    {
        if (IsChosen(speech)) headers.Append(HeaderNames.Vary, HeaderNames.AcceptLanguage);
        if (Named(speech) is { } language) headers.ContentLanguage = language;
    }

    /// <summary>Whether another header would have brought another language.</summary>
    public static bool IsChosen(Speech speech) => speech.Book.Languages.Count > 1;

    /// <summary>The language as the header Content-Language has it; null for English, which goes without saying.</summary>
    public static string? Named(Speech speech) => speech.Language == MessageBook.English ? null : speech.Language;

    // A method of its own, and asynchronous: what it says of the flow ends with it and does not reach the next request of the connection.
    private static async Task Spoken(HttpContext context, RequestDelegate next, Speech speech)
    {
        Speech.Use(speech);
        await next(context);
    }

    private static string? Find(string range, IReadOnlyList<string> languages)
    {
        if (range == "*") return languages[0];
        for (var tag = range; ; tag = tag[..tag.LastIndexOf('-')])
        {
            if (languages.FirstOrDefault(l => l.Equals(tag, StringComparison.OrdinalIgnoreCase)) is { } language) return language;
            if (!tag.Contains('-', StringComparison.Ordinal)) return null;
        }
    }
}
