namespace ConeService.Data;

internal static partial class TypedTables
{
    public static TypedTable<MessageRow> Messages { get; } = new("messages", since: new(1, 5), keyFields: 3, r => new(
        r.Text("code"), r.Word<MessageAudience>("audience"), r.Text("language"), r.Text("text")));

    public static TypedTable<TextRow> Texts { get; } = new("texts", since: new(1, 7), keyFields: 4, r => new(
        r.Text("table"), r.Text("row"), r.Word<MessageAudience>("audience"), r.Text("language"), r.Text("text")));
}
