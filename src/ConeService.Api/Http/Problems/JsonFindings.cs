using System.Text.Json;
using System.Text.RegularExpressions;
using ConeService.Contract.Answers;
using ConeService.Contract.Json;

namespace ConeService.Api.Http.Problems;

/// <summary>Turns what the JSON reader complains about into findings that name the place and not a C# type.</summary>
internal static partial class JsonFindings
{
    [GeneratedRegex(@"^The JSON property '(?<name>.*)' could not be mapped to any \.NET member contained in type '(?<type>[^']+)'", RegexOptions.Singleline)]
    private static partial Regex Unmapped();

    [GeneratedRegex(@"^Duplicate property '(?<name>.*)' encountered", RegexOptions.Singleline)]
    private static partial Regex Duplicate();

    /// <summary>A body that is a JSON literal where an object is needed.</summary>
    public static RefusedException Refuse(string literal, Type root) => new(new Finding(
        "malformed-json", "/", literal, $"The body is {literal}, not an object.", [MemberList(root)]));

    /// <summary>A body that the reader gave up on.</summary>
    public static RefusedException Refuse(JsonException failure, Type root)
    {
        var pointer = Pointer(failure.Path);
        if (Unmapped().Match(failure.Message) is { Success: true } unmapped)
        {
            var name = unmapped.Groups["name"].Value;
            var known = Members(unmapped.Groups["type"].Value, root);
            var near = NearMatches.Find(name, known);
            return new(new Finding(
                "unknown-member", pointer, name, $"There is no member “{name}” here.", [.. known],
                near.Count > 0 ? $"Probably {near[0]}." : null));
        }

        var place = failure.LineNumber is { } line ? $"line {line + 1}, byte {failure.BytePositionInLine + 1}" : "its end";
        var repeated = Duplicate().Match(failure.Message);
        return new(repeated.Success
            ? new Finding("malformed-json", pointer, repeated.Groups["name"].Value, $"The member “{repeated.Groups["name"].Value}” stands twice in one object.", ["each member once"])
            : new Finding("malformed-json", pointer, null, $"The body can't be read as JSON of this form at {place}.", [MemberList(root)], "A comma too many, a quotation mark missing, a text where a list is needed, or a body cut short."));
    }

    private static IReadOnlyList<string> Members(string typeName, Type root)
    {
        var type = root.Assembly.GetType(typeName) ?? root;
        return [.. ConeJson.Options.GetTypeInfo(type).Properties.Select(p => p.Name)];
    }

    private static string MemberList(Type root) => $"an object with {string.Join(", ", Members(root.FullName!, root))}";

    // JSONPath as System.Text.Json writes it ($.lines[2].rate) to a JSON pointer (/lines/2/rate).
    private static string Pointer(string? path) =>
        path is null or "$" ? "/" : path.TrimStart('$').Replace("['", "/", StringComparison.Ordinal).Replace("']", "", StringComparison.Ordinal)
            .Replace('.', '/').Replace("[", "/", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal);
}
