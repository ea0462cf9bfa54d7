using System.Buffers;
using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using ConeService.Contract.Answers;
using ConeService.Contract.Json;
using ConeService.Contract.Requests;

namespace ConeService.Api.Http;

/// <summary>
/// Keeps lists that are longer than allowed out of memory: of a body they are read as far as they are allowed, and every entry beyond
/// as null, so that their length can still be told when they are refused for it.
/// </summary>
internal static class ListBounds
{
    // Of words there are only so many; the lists of them have no bound of their own.
    private const int MostWords = 1000;

    private static readonly ConcurrentDictionary<Type, Shape> Shapes = new();

    /// <summary>The body to be read instead; the same when no list is too long.</summary>
    /// <param name="body">JSON, UTF-8.</param>
    /// <param name="root">The request that it is to be read as.</param>
    /// <exception cref="JsonException">A list is too long, and the body is malformed besides; any other is left to its reader.</exception>
    public static ReadOnlyMemory<byte> Keep(ReadOnlyMemory<byte> body, Type root)
    {
        var reader = new Utf8JsonReader(body.Span, new JsonReaderOptions { MaxDepth = ConeJson.Options.MaxDepth });
        var cut = new Cut(body);
        try
        {
            if (reader.Read()) Value(ref reader, ShapeOf(root), int.MaxValue, cut);
        }
        catch (JsonException) when (!cut.Any)
        {
            return body;
        }

        return cut.Done();
    }

    // The reader stands on the first token of the value, and is left on its last.
    private static void Value(ref Utf8JsonReader reader, Shape shape, int most, Cut cut)
    {
        if (reader.TokenType == JsonTokenType.StartObject && shape.Members.Count > 0)
        {
            while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
            {
                var member = Of(shape, reader);
                if (!reader.Read()) return;
                Value(ref reader, member.Shape, member.Most, cut);
            }
        }
        else if (reader.TokenType == JsonTokenType.StartArray && (most < int.MaxValue || shape.Members.Count > 0))
        {
            for (var count = 1; reader.Read() && reader.TokenType != JsonTokenType.EndArray; count++)
            {
                var start = (int)reader.TokenStartIndex;
                if (count <= most) Value(ref reader, shape, int.MaxValue, cut);
                else reader.Skip();
                if (count > most) cut.Out(start, (int)reader.BytesConsumed);
            }
        }
        else
        {
            reader.Skip();
        }
    }

    private static Member Of(Shape shape, in Utf8JsonReader reader)
    {
        try
        {
            foreach (var candidate in shape.Members)
            {
                if (reader.ValueTextEquals(candidate.Name)) return candidate;
            }
        }
        catch (InvalidOperationException)
        {
            // Half a character is escaped in the name, which its reader refuses.
        }

        return Member.None;
    }

    private static Shape ShapeOf(Type type) => Shapes.GetOrAdd(type, static t =>
        ConeJson.Options.GetTypeInfo(t) is { Kind: JsonTypeInfoKind.Object } info
            ? new([.. info.Properties.Select(Read).Where(m => m.Most < int.MaxValue || m.Shape.Members.Count > 0)])
            : Shape.Plain);

    private static Member Read(JsonPropertyInfo property)
    {
        var type = property.PropertyType;
        var isList = type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>);
        var element = isList ? type.GenericTypeArguments[0] : null;
        var attributes = property.AttributeProvider?.GetCustomAttributes(true) ?? [];
        var most = element is null ? int.MaxValue
            : attributes.OfType<ItemsAttribute>().FirstOrDefault() is { Most: < int.MaxValue } items ? items.Most
            : element == typeof(SentText) ? MostWords : int.MaxValue;
        return new(property.Name, ShapeOf(element ?? type), most);
    }

    /// <summary>The members of an object in which lists stand, however deep.</summary>
    private sealed record Shape(IReadOnlyList<Member> Members)
    {
        public static Shape Plain { get; } = new([]);
    }

    private sealed record Member(string Name, Shape Shape, int Most)
    {
        public static Member None { get; } = new("", Shape.Plain, int.MaxValue);
    }

    private sealed class Cut(ReadOnlyMemory<byte> body)
    {
        private ArrayBufferWriter<byte>? kept;
        private int copied;

        public bool Any => kept is not null;

        public void Out(int start, int end)
        {
            kept ??= new(body.Length);
            kept.Write(body.Span[copied..start]);
            kept.Write("null"u8);
            copied = end;
        }

        public ReadOnlyMemory<byte> Done()
        {
            if (kept is null) return body;
            kept.Write(body.Span[copied..]);
            return kept.WrittenMemory;
        }
    }
}
