using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using ConeService.Api.Http.Problems;
using ConeService.Contract.Answers;

namespace ConeService.Api.Http;

/// <summary>
/// Reads a body that is JSON and not the request it should be: members that nobody knows are told and passed over, so that the rest can
/// be judged too, and a coat that is a text alone is read as the id it is.
/// </summary>
internal static class LenientBody
{
    private const string Coats = "coats";
    private const string Glaze = "glaze";

    // Each is found by reading the body once more; who misspells a member of each of 500 pieces has been told often enough.
    private const int MostUnread = 10;

    /// <summary>Reads the body.</summary>
    /// <param name="body">The body.</param>
    /// <param name="failure">What the strict reader said of it.</param>
    /// <param name="type">The request.</param>
    /// <exception cref="RefusedException">It can't be read even so.</exception>
    public static (T Value, IReadOnlyList<Finding> Unread) Read<T>(ReadOnlyMemory<byte> body, JsonException failure, JsonTypeInfo<T> type)
    {
        try
        {
            return Read(JsonNode.Parse(body.Span), failure, type);
        }
        catch (Exception unreadable) when (unreadable is JsonException or ArgumentException or InvalidOperationException)
        {
            // Malformed; or a member stands twice, or half a character in a name, which a tree of nodes can't hold.
            throw JsonFindings.Refuse(failure, typeof(T));
        }
    }

    private static (T Value, IReadOnlyList<Finding> Unread) Read<T>(JsonNode? root, JsonException failure, JsonTypeInfo<T> type)
    {
        var unread = new List<Finding>();
        var named = false;
        while (true)
        {
            var refused = JsonFindings.Refuse(failure, typeof(T));
            if (!named && NameCoats(root)) named = true;
            else if (JsonFindings.IsUnknownMember(failure) && unread.Count < MostUnread && Remove(root, refused.Findings[0].Field))
                unread.AddRange(refused.Findings);
            else throw unread.Count == 0 ? refused : new RefusedException([.. unread, .. refused.Findings]);
            try
            {
                return (root.Deserialize(type)!, unread);
            }
            catch (JsonException further)
            {
                failure = further;
            }
        }
    }

    private static bool Remove(JsonNode? root, string pointer)
    {
        var parts = pointer.Split('/')[1..];
        var owner = parts[..^1].Aggregate(root, (node, part) => node switch
        {
            JsonArray list when int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var i) && i < list.Count => list[i],
            JsonObject thing => thing[part],
            _ => null,
        });
        return owner is JsonObject holder && holder.Remove(parts[^1]);
    }

    // Every coat of the body at once: true where there was any.
    private static bool NameCoats(JsonNode? node)
    {
        var any = false;
        if (node is JsonObject thing)
        {
            foreach (var (name, member) in thing.ToList())
            {
                if (name != Coats || member is not JsonArray coats) any |= NameCoats(member);
                else
                {
                    for (var i = 0; i < coats.Count; i++)
                    {
                        if (coats[i]?.GetValueKind() != JsonValueKind.String) continue;
                        coats[i] = new JsonObject { [Glaze] = coats[i]!.DeepClone() };
                        any = true;
                    }
                }
            }
        }
        else if (node is JsonArray list)
        {
            foreach (var item in list) any |= NameCoats(item);
        }

        return any;
    }
}
