using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Serialization.Metadata;
using ConeService.Contract.Answers;

namespace ConeService.Contract.Json;

/// <summary>
/// What every answer does alike, done once, so that no record can forget it: temperatures, differences and rates answer in
/// °C and °F, the ends of a range stand together, a detail is flat, and what was computed says by what. Requests are read as they are.
/// </summary>
internal static class AnswerShapes
{
    private const string Min = "Min";

    private const string Known = "Each is the type of a member that the source generator knows, and looked up before it is used.";

    private static readonly HashSet<Type> Requests = RequestTypes.All();

    /// <summary>Shapes one type.</summary>
    public static void Shape(JsonTypeInfo type)
    {
        if (type.Kind != JsonTypeInfoKind.Object || Requests.Contains(type.Type)) return;
        Flatten(type);
        Fold(type);
        AddTwins(type);
        if (typeof(IComputed).IsAssignableFrom(type.Type)) Explain(type);
    }

    // After what the answer rests on, before what must be known of it.
    private static void Explain(JsonTypeInfo type)
    {
        var beside = type.Properties.First(p => p.Name == "confidence");
        var explain = Made(type, typeof(Address), "explain", beside, o => ((IComputed)o).Explain, isDocumented: false);
        explain.IsGetNullable = explain.IsSetNullable = false;
        explain.AttributeProvider = typeof(IComputed).GetProperty(nameof(IComputed.Explain));
        type.Properties.Insert(type.Properties.IndexOf(beside) + 1, explain);
    }

    private static void Flatten(JsonTypeInfo type)
    {
        for (var i = type.Properties.Count - 1; i >= 0; i--)
        {
            var outer = type.Properties[i];
            if (outer.AttributeProvider?.IsDefined(typeof(FlatAttribute), false) != true) continue;
            type.Properties.RemoveAt(i);
            var own = type.Properties.Select(p => p.Name).ToHashSet(StringComparer.Ordinal);
            var at = i;
            foreach (var inner in type.Options.GetTypeInfo(outer.PropertyType).Properties.Where(p => !own.Contains(p.Name)))
            {
                type.Properties.Insert(at++, Made(type, inner.PropertyType, inner.Name, inner, o => inner.Get!(outer.Get!(o)!)));
            }
        }
    }

    private static void Fold(JsonTypeInfo type)
    {
        for (var i = type.Properties.Count - 1; i >= 0; i--)
        {
            var low = type.Properties[i];
            if (low.AttributeProvider?.GetCustomAttributes(typeof(RangeOfAttribute), false) is not [RangeOfAttribute range]) continue;
            // Come from a flattened member, where it was folded, or is the twin of one.
            if (low.PropertyType == typeof(ConeRange) || low.PropertyType == typeof(NumberRange)) continue;
            var stem = low.Name[..^Min.Length];
            var best = type.Properties.FirstOrDefault(p => p.Name == Named(stem, "Best"));
            var high = type.Properties.First(p => p.Name == Named(stem, "Max"));
            var isCone = low.PropertyType == typeof(string);
            object? Folded(object owner) =>
                (low.Get!(owner), best?.Get!(owner), high.Get!(owner)) switch
                {
                    (null, null, null) => null,
                    var (least, middle, most) when isCone => new ConeRange((string?)least, (string?)middle, (string?)most),
                    var (least, _, most) => new NumberRange(Number(least), Number(most)),
                };
            var folded = Made(type, isCone ? typeof(ConeRange) : typeof(NumberRange), range.Name, low, Folded);
            folded.IsGetNullable = folded.IsSetNullable = low.IsGetNullable && high.IsGetNullable && best?.IsGetNullable != false;
            type.Properties[i] = folded;
            if (best is not null) type.Properties.Remove(best);
            type.Properties.Remove(high);
        }
    }

    private static void AddTwins(JsonTypeInfo type)
    {
        var own = type.Properties.Select(p => p.Name).ToHashSet(StringComparer.Ordinal);
        for (var i = type.Properties.Count - 1; i >= 0; i--)
        {
            var celsius = type.Properties[i];
            if (Twin.NameOf(celsius.Name) is not { } name || own.Contains(name) || !Twin.IsNumber(celsius.PropertyType)) continue;
            var isScale = Twin.IsOnTheScale(celsius.Name);
            type.Properties.Insert(
                i + 1,
                Made(
                    type, celsius.PropertyType, name, celsius, o => Twin.Of(celsius.Get!(o), isScale),
                    // What may be null is read off the member behind it, unless its type says so.
                    isDocumented: celsius.PropertyType == typeof(NumberRange)));
        }
    }

    [UnconditionalSuppressMessage("Trimming", "IL2026", Justification = Known)]
    [UnconditionalSuppressMessage("AOT", "IL3050", Justification = Known)]
    private static JsonPropertyInfo Made(
        JsonTypeInfo type, Type valueType, string name, JsonPropertyInfo like, Func<object, object?> get, bool isDocumented = true)
    {
        // Once it is known, the member is made by it and without reflection.
        _ = type.Options.GetTypeInfo(valueType);
        var made = type.CreateJsonPropertyInfo(valueType, name);
        made.Get = get;
        // Never used: an answer is written and not read. Without it the member can't be called required.
        made.Set = static (_, _) => { };
        made.IsRequired = true;
        made.IsGetNullable = like.IsGetNullable;
        made.IsSetNullable = like.IsGetNullable;
        if (valueType == like.PropertyType) made.CustomConverter = like.CustomConverter;
        if (isDocumented) made.AttributeProvider = like.AttributeProvider;
        return made;
    }

    private static string Named(string stem, string end) => stem.Length == 0 ? end.ToLowerInvariant() : stem + end;

    private static decimal? Number(object? value) =>
        value is null ? null : Convert.ToDecimal(value, CultureInfo.InvariantCulture);
}
