using ConeService.Contract.Answers;
using Microsoft.AspNetCore.Routing.Patterns;

namespace ConeService.Api.Http;

/// <summary>Finds the addresses that a caller may have meant by a path that is not there.</summary>
/// <param name="endpoints">Every endpoint of the host.</param>
internal sealed class NearPaths(EndpointDataSource endpoints)
{
    /// <summary>
    /// Paths like the one asked for with words of routes in place of misspelt ones; ids and values stay as they were sent.
    /// </summary>
    /// <param name="path">The path asked for.</param>
    public IReadOnlyList<string> Find(string path)
    {
        var sent = path.Split('/', StringSplitOptions.RemoveEmptyEntries);
        // A caller may have left the version out, too.
        List<string> there = [.. Candidates(sent), .. Candidates(["v1", .. sent])];
        // What was asked for is not there and leads nowhere.
        return [.. there.Distinct(StringComparer.Ordinal).Where(p => p != path).Take(3)];
    }

    private IEnumerable<string> Candidates(string[] sent) => endpoints.Endpoints.OfType<RouteEndpoint>()
        .Where(e => e.RoutePattern.PathSegments.Count == sent.Length)
        .Select(e => Put(e.RoutePattern, sent))
        .OfType<string>();

    private static string? Put(RoutePattern pattern, string[] sent)
    {
        var path = new string[sent.Length];
        foreach (var (i, segment) in pattern.PathSegments.Index())
        {
            if (segment.Parts is not [RoutePatternLiteralPart literal])
            {
                path[i] = segment.IsSimple ? sent[i] : Shaped(segment, sent[i]);
                continue;
            }

            if (NearMatches.Find(sent[i], [literal.Content]).Count == 0) return null;
            path[i] = literal.Content;
        }

        // Parameters alone would make every path near.
        return pattern.PathSegments.Any(s => s.Parts is [RoutePatternLiteralPart]) ? "/" + string.Join('/', path) : null;
    }

    // Of what is put together, such as {cone}@{rate}, the part that was left out is filled in, so that its form can be seen: 06@60.
    private static string Shaped(RoutePatternPathSegment segment, string sent)
    {
        if (segment.Parts is not [RoutePatternParameterPart first, RoutePatternLiteralPart between, RoutePatternParameterPart last])
            return sent;
        var at = sent.IndexOf(between.Content, StringComparison.Ordinal);
        var (before, behind) = at < 0 ? (sent, "") : (sent[..at], sent[(at + between.Content.Length)..]);
        return Filled(before, first.Name) + between.Content + Filled(behind, last.Name);
    }

    private static string Filled(string sent, string name) =>
        sent.Length > 0 ? sent : name switch { "cone" => "06", "rate" => "60", _ => "{" + name + "}" };
}
