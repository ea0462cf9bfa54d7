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
        return [.. there.Distinct(StringComparer.Ordinal).Take(3)];
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
                path[i] = sent[i];
                continue;
            }

            if (NearMatches.Find(sent[i], [literal.Content]).Count == 0) return null;
            path[i] = literal.Content;
        }

        // Parameters alone would make every path near.
        return pattern.PathSegments.Any(s => s.Parts is [RoutePatternLiteralPart]) ? "/" + string.Join('/', path) : null;
    }
}
