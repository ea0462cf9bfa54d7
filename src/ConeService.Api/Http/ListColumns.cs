using System.Text.Json;

namespace ConeService.Api.Http;

/// <summary>The columns of a list: every scalar member that one of its items has, in the order in which the members stand.</summary>
internal sealed class ListColumns
{
    private readonly Node root = new();

    /// <summary>The members of an item by which a column is found.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Paths => [.. Leaves(root, [])];

    /// <summary>The names of the columns.</summary>
    public IEnumerable<string> Names => Paths.Select(p => string.Join('_', p.Select(JsonNamingPolicy.SnakeCaseLower.ConvertName)));

    /// <summary>Takes note of the members of an item. One that is null holds its place: another item may have an object there.</summary>
    public void Add(JsonElement item) => Add(root, item);

    private static void Add(Node node, JsonElement value)
    {
        foreach (var member in value.EnumerateObject())
        {
            if (!node.Members.TryGetValue(member.Name, out var child)) node.Members.Add(member.Name, child = new());
            if (member.Value.ValueKind == JsonValueKind.Object) Add(child, member.Value);
        }
    }

    private static IEnumerable<string[]> Leaves(Node node, string[] path) => node.Members.SelectMany(m =>
        m.Value.Members.Count == 0 ? [[.. path, m.Key]] : Leaves(m.Value, [.. path, m.Key]));

    private sealed class Node
    {
        public OrderedDictionary<string, Node> Members { get; } = new(StringComparer.Ordinal);
    }
}
