using System.Text.Json;
using System.Text.RegularExpressions;
using ConeService.Contract.Answers;
using ConeService.Contract.Json;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Http.Problems;

/// <summary>Turns what the JSON reader complains about into findings that name the place and not a C# type.</summary>
internal static partial class JsonFindings
{
    [GeneratedRegex(
        @"^The JSON property '(?<name>.*)' could not be mapped to any \.NET member contained in type '(?<type>[^']+)'",
        RegexOptions.Singleline)]
    private static partial Regex Unmapped();

    [GeneratedRegex(@"^Duplicate property '(?<name>.*)' encountered", RegexOptions.Singleline)]
    private static partial Regex Duplicate();

    /// <summary>A body that is a JSON literal where an object is needed.</summary>
    public static RefusedException Refuse(string literal, Type root) => new(new Finding(
        FindingCodes.MalformedJson, "/", literal, Message.Of("http.body-is-literal", ("literal", literal)), [MemberList(root)]));

    /// <summary>True when the reader gave up on a member that nobody knows.</summary>
    public static bool IsUnknownMember(JsonException failure) => Unmapped().IsMatch(failure.Message);

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
                FindingCodes.UnknownMember, pointer, name, Message.Of("http.unknown-member", ("name", name)), Message.Verbatim(known),
                near.Count > 0 ? Message.Of("answers.near-match", ("near", near[0])) : null));
        }

        if (Duplicate().Match(failure.Message) is { Success: true } repeated)
        {
            var name = repeated.Groups["name"].Value;
            return new(new Finding(
                FindingCodes.MalformedJson, pointer, name, Message.Of("http.repeated-member", ("name", name)),
                [Message.Of("http.each-member-once")]));
        }

        var place = failure.LineNumber is { } line
            ? Message.Of("http.body-malformed-at", ("line", line + 1), ("byte", failure.BytePositionInLine + 1))
            : Message.Of("http.body-malformed-at-end");
        return new(new Finding(FindingCodes.MalformedJson, pointer, null, place, [MemberList(root)], Message.Of("http.malformed-why")));
    }

    private static IReadOnlyList<string> Members(string typeName, Type root)
    {
        var type = root.Assembly.GetType(typeName) ?? root;
        return [.. ConeJson.Options.GetTypeInfo(type).Properties.Select(p => p.Name)];
    }

    private static Message MemberList(Type root) => Message.Of("http.object-with", ("members", Members(root.FullName!, root)));

    // JSONPath as System.Text.Json writes it ($.lines[2].rate) to a JSON pointer (/lines/2/rate).
    private static string Pointer(string? path) =>
        path is null or "$"
            ? "/"
            : path.TrimStart('$').Replace("['", "/", StringComparison.Ordinal).Replace("']", "", StringComparison.Ordinal)
            .Replace('.', '/').Replace("[", "/", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal);
}
