using System.Collections.Concurrent;
using System.Text.RegularExpressions;

namespace ConeService.Data;

/// <summary>Reads one field of a descriptor.</summary>
internal static class FieldSchemaReader
{
    // A pattern is costly to make and to warm up, stands in many fields, and is the same in every package that is loaded.
    private static readonly ConcurrentDictionary<string, Regex> Patterns = new(StringComparer.Ordinal);

    public static FieldSchema? Read(FieldJson? json, string table, int index, DescriptorFaults found)
    {
        if (json is null)
        {
            found.Add($"{table}.schema.fields[{index}]", "is null; it must be an object");
            return null;
        }

        var name = found.Require(json.Name, $"{table}.schema.fields[{index}].name");
        var at = $"{table}.{(name.Length > 0 ? name : $"fields[{index}]")}";
        var type = json is { Type: "string", ItemDelimiter: not null } ? FieldType.List : Type(json.Type, at, found);
        if (type == FieldType.List)
            List(json, at, found);
        else
            NoItems(json, at, found);
        var reference = json.ItemReference is { Resource: { } resource, Field: { } field } ? new ItemReference(resource, field) : null;
        var constraints = Constraints(json.Constraints, type, $"{at}.constraints", found);
        if (json.ItemConstraints is { } items)
        {
            constraints = Constraints(items, type, $"{at}.itemConstraints", found) with
            {
                Required = constraints.Required,
                Unique = constraints.Unique,
            };
        }

        return new FieldSchema(
            name, type, found.Require(json.Description, $"{at}.description"), json.Unit, json.UnitField, constraints,
            (json.ItemDelimiter ?? json.Delimiter) is [var d] ? d : ';', reference);
    }

    private static FieldType Type(string? type, string at, DescriptorFaults found)
    {
        switch (type)
        {
            case "string": return FieldType.String;
            case "number": return FieldType.Number;
            case "integer": return FieldType.Integer;
            case "list": return FieldType.List;
            default:
                found.Add($"{at}.type", $"is '{type}'; it must be string, number, integer or list");
                return FieldType.String;
        }
    }

    private static void NoItems(FieldJson json, string at, DescriptorFaults found)
    {
        if (json.ItemDelimiter is not null)
        {
            found.Add($"{at}.itemDelimiter", "is for fields of the type string");
            return;
        }

        if (json.ItemReference is not null)
            found.Add($"{at}.itemReference", "is for lists, which have itemDelimiter; use foreignKeys");
        if (json.ItemConstraints is not null)
            found.Add($"{at}.itemConstraints", "is for lists, which have itemDelimiter; use constraints");
    }

    // A list is text to whoever knows the standard alone, so what is asked of each item stands apart from what is asked of the cell.
    private static void List(FieldJson json, string at, DescriptorFaults found)
    {
        if (json.Type == "list")
            EarlierList(json, at, found);
        else if (json.ItemDelimiter is not [_])
            found.Add($"{at}.itemDelimiter", $"is '{json.ItemDelimiter}'; it must be the one character between the items");
        else if (json.Constraints is { Enum: not null } or { Pattern: not null })
            found.Add(
                $"{at}.constraints", "has enum or pattern, which would be of the whole cell; what each item must be is itemConstraints");
        if (json.ItemConstraints is { Required: true } or { Unique: true })
            found.Add($"{at}.itemConstraints", "has required or unique, which are of the cell; use constraints");
        if (json.ItemReference is { } reference && (reference.Resource is null || reference.Field is null))
            found.Add($"{at}.itemReference", "needs resource and field");
    }

    private static void EarlierList(FieldJson json, string at, DescriptorFaults found)
    {
        if (json.Delimiter is not [_])
            found.Add($"{at}.delimiter", "is missing; a list needs one character between its items");
        if (json.ItemType is not (null or "string"))
            found.Add($"{at}.itemType", $"is '{json.ItemType}'; items must be string");
    }

    private static FieldConstraints Constraints(ConstraintsJson? json, FieldType type, string at, DescriptorFaults found)
    {
        if (json is null)
            return new FieldConstraints(false, false, null, null, null, null, null);
        foreach (var name in json.Unknown?.Keys.Order(StringComparer.Ordinal) ?? Enumerable.Empty<string>())
            found.Add($"{at}.{name}", "is not supported; required, unique, enum, pattern, minimum and maximum are");
        if (json.Enum is [])
            found.Add($"{at}.enum", "is empty; it must name at least one value");
        if ((json.Minimum ?? json.Maximum) is not null && type is not (FieldType.Number or FieldType.Integer))
            found.Add(at, "minimum and maximum are for numbers");
        return new FieldConstraints(json.Required, json.Unique, json.Enum, json.Pattern, Pattern(json.Pattern, at, found), json.Minimum,
            json.Maximum);
    }

    private static Regex? Pattern(string? pattern, string at, DescriptorFaults found)
    {
        if (pattern is null)
            return null;
        try
        {
            // Linear time whatever the pattern: overlays are written by strangers to this code.
            return KnownPatterns.Find(pattern) ?? Patterns.GetOrAdd(
                pattern, static p => new Regex($@"^(?:{p})\z", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking));
        }
        catch (Exception e) when (e is ArgumentException or NotSupportedException)
        {
            found.Add($"{at}.pattern", $"'{pattern}' is not a pattern that can be read: {e.Message}");
            return null;
        }
    }
}
