using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using System.Text.RegularExpressions;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Http.Problems;

/// <summary>Turns what the JSON reader complains about into findings that name the place and not a C# type.</summary>
internal static partial class JsonFindings
{
    [GeneratedRegex(@"^Duplicate property '(?<name>.*)' encountered", RegexOptions.Singleline)]
    private static partial Regex Duplicate();

    /// <summary>A body that the reader gave up on.</summary>
    public static Finding Of(JsonException failure, JsonTypeInfo root)
    {
        var pointer = Pointer(failure.Path);
        if (Duplicate().Match(failure.Message) is { Success: true } repeated) return Repeated(pointer, repeated.Groups["name"].Value);
        var place = failure.LineNumber is { } line
            ? Message.Of("http.body-malformed-at", ("line", line + 1), ("byte", failure.BytePositionInLine + 1))
            : Message.Of("http.body-malformed-at-end");
        return new(FindingCodes.MalformedJson, pointer, null, place, [MemberList(root)], Message.Of("http.malformed-why"));
    }

    /// <summary>A member that nobody knows, with those that are known.</summary>
    public static Finding Unknown(string pointer, string name, JsonTypeInfo owner)
    {
        var known = Members(owner);
        return new(
            FindingCodes.UnknownMember, pointer, name, Message.Of("http.unknown-member", ("name", name)), Message.Verbatim(known),
            Near(name, owner) is { } near ? Message.Of("answers.near-match", ("near", near)) : null);
    }

    /// <summary>The member that a name is probably a slip of; null where none is near.</summary>
    public static string? Near(string name, JsonTypeInfo owner) => NearMatches.Find(name, Members(owner)) is [var near, ..] ? near : null;

    /// <summary>A member that stands twice in one object.</summary>
    public static Finding Repeated(string pointer, string name) => new(
        FindingCodes.MalformedJson, pointer, name, Message.Of("http.repeated-member", ("name", name)),
        [Message.Of("http.each-member-once")]);

    /// <summary>“An object with …”.</summary>
    public static Message MemberList(JsonTypeInfo type) => Message.Of("http.object-with", ("members", Members(type)));

    private static IReadOnlyList<string> Members(JsonTypeInfo type) => [.. type.Properties.Select(p => p.Name)];

    // JSONPath as System.Text.Json writes it ($.lines[2].rate) to a JSON pointer (/lines/2/rate).
    private static string Pointer(string? path) =>
        path is null or "$"
            ? "/"
            : path.TrimStart('$').Replace("['", "/", StringComparison.Ordinal).Replace("']", "", StringComparison.Ordinal)
            .Replace('.', '/').Replace("[", "/", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal);
}
