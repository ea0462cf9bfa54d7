using ConeService.Firing;

namespace ConeService.Api.Http;

/// <summary>Lists: JSON, or CSV for who asks for it; both prepared once for each data package and language.</summary>
internal static class ListAnswer
{
    /// <summary>The addresses that answer a list, and so CSV too.</summary>
    public static IReadOnlyList<string> Routes { get; } =
    [
        "/v1/cautions", "/v1/charts", "/v1/charts/{chart}", "/v1/clay-bodies", "/v1/colorants", "/v1/cone-facts", "/v1/cones",
        "/v1/disagreements", "/v1/equations", "/v1/faults", "/v1/firing-kinds", "/v1/glazes", "/v1/glossary", "/v1/landmarks", "/v1/limits",
        "/v1/load-rules", "/v1/processes", "/v1/reason-codes", "/v1/schedules", "/v1/sources", "/v1/tables",
    ];

    /// <summary>A list that takes nothing but the package.</summary>
    /// <param name="request">The request.</param>
    /// <param name="snapshot">The data in use.</param>
    /// <param name="key">Key of the prepared body, as of <see cref="Snapshot.Prepare{T}"/>.</param>
    /// <param name="make">Makes the answer.</param>
    /// <param name="list">Name of the list that is the table, as of <see cref="ListCsv.Body{T}"/>.</param>
    public static IResult Prepared<T>(
        HttpRequest request, Snapshot snapshot, string key, Func<FiringReference, T> make, string? list = null)
        where T : class =>
        Prepared(request, snapshot, key, make, static (r, f) => f(r), list);

    /// <summary>The same, of a state.</summary>
    /// <param name="request">The request.</param>
    /// <param name="snapshot">The data in use.</param>
    /// <param name="key">Key of the prepared body.</param>
    /// <param name="state">What the answer is made of besides the package.</param>
    /// <param name="make">Makes the answer.</param>
    /// <param name="list">Name of the list that is the table.</param>
    /// <param name="every">A column that is the same in every line.</param>
    public static IResult Prepared<TState, T>(
        HttpRequest request, Snapshot snapshot, string key, TState state, Func<FiringReference, TState, T> make, string? list = null,
        (string Name, string Value)? every = null)
        where T : class => WantsCsv(request)
        ? snapshot.Prepare("csv " + key, (state, make, list, every), static (r, x) => ListCsv.Body(x.make(r, x.state), x.list, x.every))
        : snapshot.Prepare(key, (state, make), static (r, x) => JsonBody.Cacheable(x.make(r, x.state)));

    /// <summary>A list of which some may be asked for: all of it is prepared, some of it made anew.</summary>
    /// <param name="request">The request.</param>
    /// <param name="snapshot">The data in use.</param>
    /// <param name="key">Key of the prepared body.</param>
    /// <param name="filters">What was asked for; all null: the whole list.</param>
    /// <param name="whole">All of the items; in CSV they give the columns, which what was asked must not change.</param>
    /// <param name="some">The items asked for, or none.</param>
    public static IResult Filtered<T>(
        HttpRequest request, Snapshot snapshot, string key, string?[] filters, Func<FiringReference, T> whole,
        Func<FiringReference, T> some)
        where T : class
    {
        if (Array.TrueForAll(filters, f => f is null)) return Prepared(request, snapshot, key, whole);
        var answer = some(snapshot.Reference);
        return WantsCsv(request) ? ListCsv.Body(answer, columnsOf: whole(snapshot.Reference)) : JsonBody.Cacheable(answer);
    }

    /// <summary>Whether CSV is asked for.</summary>
    public static bool WantsCsv(HttpRequest request) =>
        Negotiation.Choose(request, JsonBody.MediaType, Csv.MediaType) == Csv.MediaType;
}
