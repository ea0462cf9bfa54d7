using System.ComponentModel.DataAnnotations;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using ConeService.Api.Http.Problems;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Http.Reading;

/// <summary>What is told of a member that has another form than its request gives it.</summary>
internal static class ShapeFindings
{
    /// <summary>Something else where an object belongs; the empty pointer is the whole body.</summary>
    public static Finding NoObject(JsonElement sent, string pointer, JsonTypeInfo type) => new(
        FindingCodes.ObjectExpected, pointer, Text(sent),
        pointer.Length == 0
            ? Message.Of("http.body-is-literal", ("literal", Text(sent)))
            : Message.Of("members.object-expected", ("member", Name(pointer))),
        [JsonFindings.MemberList(type)]);

    /// <summary>Something else where a list belongs.</summary>
    public static Finding NoList(JsonElement sent, string pointer) => new(
        FindingCodes.ListExpected, pointer, Text(sent), Message.Of("members.list-expected", ("member", Name(pointer))),
        [Message.Of("members.any-list")], Message.Of("members.one-alone"));

    /// <summary>Something else where a text belongs.</summary>
    public static Finding NoText(JsonElement sent, string pointer, JsonPropertyInfo? member) => new(
        FindingCodes.TextExpected, pointer, Text(sent), Message.Of("members.text-expected", ("member", Name(pointer))),
        member?.AttributeProvider?.GetCustomAttributes(typeof(AllowedValuesAttribute), true) is [AllowedValuesAttribute words, ..]
            ? Message.Verbatim(words.Values.OfType<string>())
            : [Message.Of("members.any-text")],
        sent.ValueKind == JsonValueKind.Number ? Message.Of("members.quotation-marks-needed", ("sent", Text(sent))) : null);

    /// <summary>Something else where a number belongs.</summary>
    public static Finding NoNumber(JsonElement sent, string pointer) => new(
        FindingCodes.NumberExpected, pointer, Text(sent), Message.Of("members.number-expected", ("member", Name(pointer))),
        [Message.Of("members.any-number")],
        Quoted(sent) is null ? null : Message.Of("members.number-in-quotation-marks", ("number", Text(sent).Trim())));

    /// <summary>Something else where true or false belongs.</summary>
    public static Finding NoBoolean(JsonElement sent, string pointer) => new(
        FindingCodes.BooleanExpected, pointer, Text(sent), Message.Of("members.boolean-expected", ("member", Name(pointer))),
        Message.Verbatim(["true", "false"]),
        sent.ValueKind == JsonValueKind.String && bool.TryParse(sent.GetString(), out _)
            ? Message.Of("members.quotation-marks-needless")
            : null);

    /// <summary>The number that stands in quotation marks; null where none does.</summary>
    public static double? Quoted(JsonElement sent) =>
        sent.ValueKind == JsonValueKind.String
        && double.TryParse(sent.GetString(), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number)
            ? number
            : null;

    private static string Text(JsonElement sent) => Told.Cut(
        sent.ValueKind == JsonValueKind.String ? sent.GetString()! : sent.GetRawText())!;

    // Of an entry the list that it stands in.
    private static string Name(string pointer)
    {
        var parts = pointer.Split('/');
        return parts.Length > 2 && int.TryParse(parts[^1], NumberStyles.None, CultureInfo.InvariantCulture, out _) ? parts[^2] : parts[^1];
    }
}
