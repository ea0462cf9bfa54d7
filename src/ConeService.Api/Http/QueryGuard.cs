using ConeService.Api.Http.Problems;
using ConeService.Api.OpenApi;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using Microsoft.Extensions.Primitives;

namespace ConeService.Api.Http;

/// <summary>
/// Refuses query parameters that an endpoint does not know, and repeated ones: a misspelt rate must not become the default rate.
/// </summary>
internal static class QueryGuard
{
    /// <summary>Declares the query parameters of an endpoint.</summary>
    public static RouteHandlerBuilder WithQuery(this RouteHandlerBuilder builder, params string[] known) =>
        builder.Problems(StatusCodes.Status400BadRequest).WithMetadata(new KnownQuery(known));

    /// <summary>
    /// Checks the query against what the endpoint declared. A step of the pipeline and not an endpoint filter: a filter
    /// would cost every request its boxed arguments, and most have no query at all.
    /// </summary>
    public static RequestDelegate Middleware(RequestDelegate next) => context =>
    {
        Suffix.Check(context);
        if (context.Request.QueryString.HasValue && context.GetEndpoint() is { } endpoint && Known(endpoint) is { } known)
        {
            LeaveOut(context, Find(context.Request.Query, known, endpoint.Metadata.GetMetadata<EmptyFields>() is not null));
            if (context.Request.Query.TryGetValue(PinnedDataset.Parameter, out var version))
                PinnedDataset.Check(context, version.ToString());
        }

        return next(context);
    };

    /// <summary>The query parameters that an address knows; null for one that declared none.</summary>
    public static IReadOnlyList<string>? Known(Endpoint endpoint) => endpoint.Metadata.GetMetadata<KnownQuery>() is { } known
        ? endpoint.Metadata.GetMetadata<DataRoute>() is null ? known.Names : [.. known.Names, PinnedDataset.Parameter]
        : null;

    /// <summary>
    /// Says of an address that forms ask it: a form sends the fields that were left empty too. Elsewhere an empty value is refused, as
    /// it comes from a cell of a spreadsheet or a variable that nobody filled, and must not become the usual one.
    /// </summary>
    public static RouteHandlerBuilder WithEmptyFields(this RouteHandlerBuilder builder) => builder.WithMetadata(new EmptyFields());

    /// <summary>Checks the parameters of an address: that all are known, that each stands once and, but for those of forms, is not
    /// empty.</summary>
    /// <param name="query">The parameters.</param>
    /// <param name="known">Those that the address knows.</param>
    /// <param name="allowsEmpty">Whether a form asks it.</param>
    /// <exception cref="RefusedException">Some are not.</exception>
    public static void Check(IEnumerable<KeyValuePair<string, StringValues>> query, IReadOnlyList<string> known, bool allowsEmpty)
    {
        if (Find(query, known, allowsEmpty) is [_, ..] findings) throw new RefusedException(findings);
    }

    // What is wrong with the rest of the request is told too.
    private static void LeaveOut(HttpContext context, List<Finding> findings)
    {
        if (findings.Count == 0) return;
        foreach (var finding in findings) Mistakes.Add(context, finding);
        var wrong = findings.Select(f => f.Field).ToHashSet(StringComparer.OrdinalIgnoreCase);
        context.Request.Query = new QueryCollection(context.Request.Query.Where(q => !wrong.Contains(q.Key))
            .ToDictionary(StringComparer.OrdinalIgnoreCase));
    }

    private static List<Finding> Find(
        IEnumerable<KeyValuePair<string, StringValues>> query, IReadOnlyList<string> known, bool allowsEmpty)
    {
        var findings = new List<Finding>();
        foreach (var (name, values) in query)
        {
            if (!known.Contains(name, StringComparer.OrdinalIgnoreCase))
            {
                var near = NearMatches.Find(name, known);
                findings.Add(new(
                    FindingCodes.UnknownParameter, name, values.ToString(), Message.Of("http.unknown-parameter", ("name", name)),
                    known.Count > 0 ? Message.Verbatim(known) : [Message.Of("http.no-parameters")],
                    near.Count > 0 ? Message.Of("answers.near-match", ("near", near[0])) : null));
            }
            else if (values.Count > 1)
            {
                findings.Add(new(
                    FindingCodes.RepeatedParameter, name, values.ToString(),
                    Message.Of("http.repeated-parameter", ("name", name), ("times", values.Count)), [Message.Of("http.one-value")]));
            }
            else if (!allowsEmpty && string.IsNullOrWhiteSpace(values.ToString()) && !IsPin(name))
            {
                findings.Add(new(
                    FindingCodes.MemberMissing, name, values.ToString(), Message.Of("http.empty-parameter", ("name", name)),
                    [Message.Of("http.one-value"), Message.Of("http.leave-out", ("name", name))],
                    Message.Of("http.empty-parameter-why")));
            }
        }

        return findings;
    }

    // An empty pin names no version that is served, and is refused as such.
    private static bool IsPin(string name) => name.Equals(PinnedDataset.Parameter, StringComparison.OrdinalIgnoreCase);

    private sealed record KnownQuery(string[] Names);

    private sealed record EmptyFields;
}
