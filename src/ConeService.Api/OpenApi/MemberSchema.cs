using System.ComponentModel;
using System.ComponentModel.DataAnnotations;
using System.Globalization;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using System.Text.RegularExpressions;
using ConeService.Contract.Answers;
using ConeService.Contract.Requests;
using ConeService.Data;
using Microsoft.OpenApi;

namespace ConeService.Api.OpenApi;

/// <summary>The schema of one member of a request, from what is declared beside it.</summary>
internal static class MemberSchema
{
    /// <summary>The schema, without a description.</summary>
    /// <param name="generated">What the generator made of the type of the member.</param>
    /// <param name="member">The member.</param>
    /// <param name="element">Of a list the type of its entries; null for others.</param>
    /// <param name="needed">True when a request without it is refused; otherwise null is as good as leaving it out.</param>
    public static IOpenApiSchema Of(IOpenApiSchema generated, JsonPropertyInfo member, Type? element, bool needed)
    {
        var declared = (MemberInfo)member.AttributeProvider!;
        if (element is not null) return List(generated, declared, element, needed);
        var type = Nullable.GetUnderlyingType(member.PropertyType) ?? member.PropertyType;
        if (type == typeof(SentText) || type == typeof(string)) return Scalar(declared, JsonSchemaType.String, needed);
        if (type == typeof(double)) return Scalar(declared, JsonSchemaType.Number, needed);
        if (type == typeof(bool)) return Scalar(declared, JsonSchemaType.Boolean, needed);
        return Object(generated, declared, needed);
    }

    /// <summary>A description in which members are called as callers write them: a comment of C# names properties.</summary>
    /// <param name="text">The description.</param>
    /// <param name="members">The members of the same object.</param>
    public static string? CallerWords(string? text, IEnumerable<JsonPropertyInfo> members) => text is null ? null : members.Aggregate(
        text, (told, m) => Regex.Replace(
            told, $@"(?<=[a-z,] ){char.ToUpperInvariant(m.Name[0])}{m.Name[1..]}\b", m.Name, RegexOptions.CultureInvariant));

    private static IOpenApiSchema Object(IOpenApiSchema generated, MemberInfo declared, bool needed)
    {
        var reference = generated as OpenApiSchemaReference ?? generated.OneOf!.OfType<OpenApiSchemaReference>().Single();
        reference.Description = null;
        IOpenApiSchema thing = declared.GetCustomAttribute<NeedsAttribute>() is { } needs
            ? new OpenApiSchema
            {
                AllOf = [reference],
                Required = new SortedSet<string>(needs.Members.Select(JsonNamingPolicy.CamelCase.ConvertName), StringComparer.Ordinal),
            }
            : reference;
        return needed ? thing : OrNull(thing);
    }

    private static OpenApiSchema List(IOpenApiSchema generated, MemberInfo declared, Type element, bool needed)
    {
        var items = declared.GetCustomAttribute<ItemsAttribute>();
        return new()
        {
            Type = JsonSchemaType.Array | (needed ? 0 : JsonSchemaType.Null),
            Items = element == typeof(SentText) ? Words(declared, JsonSchemaType.String) : generated.Items,
            MinItems = items is { Least: > 0 } ? items.Least : null,
            MaxItems = items is { Most: < int.MaxValue } ? items.Most : null,
        };
    }

    private static OpenApiSchema Scalar(MemberInfo declared, JsonSchemaType type, bool needed)
    {
        var range = declared.GetCustomAttribute<RangeAttribute>();
        if (range is not null) type = range.OperandType == typeof(int) ? JsonSchemaType.Integer : JsonSchemaType.Number;
        type = declared.GetCustomAttribute<SentAsAttribute>()?.Form switch
        {
            SentForm.Number => JsonSchemaType.Number,
            SentForm.Quantity => JsonSchemaType.Number | JsonSchemaType.String,
            _ => type,
        };
        var schema = Words(declared, type);
        schema.Format = type == JsonSchemaType.Number ? "double" : null;
        schema.Pattern = declared.GetCustomAttribute<RegularExpressionAttribute>()?.Pattern;
        schema.Default = declared.GetCustomAttribute<DefaultValueAttribute>()?.Value is { } left
            ? JsonSerializer.SerializeToNode(left, left.GetType())
            : null;
        if (range is not null)
        {
            var least = Text(range.Minimum);
            if (range.MinimumIsExclusive) schema.ExclusiveMinimum = least;
            else schema.Minimum = least;
            schema.Maximum = Text(range.Maximum);
        }

        if (needed) return schema;
        // null is no word of the vocabulary, and would have to be listed among them.
        if (schema.Enum is not null) return OrNull(schema);
        schema.Type |= JsonSchemaType.Null;
        return schema;
    }

    private static OpenApiSchema Words(MemberInfo declared, JsonSchemaType type)
    {
        IEnumerable<string>? words =
            declared.GetCustomAttribute<WordsOfAttribute>() is { } closed
                ? Enum.GetNames(closed.Vocabulary).Select(JsonNamingPolicy.KebabCaseLower.ConvertName)
            : declared.GetCustomAttribute<AtmosphereWordsAttribute>() is { } air ? Atmospheres.Of(air.Use).Select(EnumWords.Word)
            : declared.GetCustomAttribute<AllowedValuesAttribute>()?.Values.Cast<string>();
        return new() { Type = type, Enum = words?.Select(w => (JsonNode)JsonValue.Create(w)).ToList() };
    }

    private static OpenApiSchema OrNull(IOpenApiSchema schema) =>
        new() { OneOf = [new OpenApiSchema { Type = JsonSchemaType.Null }, schema] };

    private static string Text(object number) => Convert.ToString(number, CultureInfo.InvariantCulture)!;
}
