namespace ConeService.Data;

/// <summary>The messages of the embedded package, read without the rest of it: sentences are needed before and without a package.</summary>
public static class EmbeddedMessages
{
    private static readonly Lazy<IReadOnlyList<MessageRow>> Rows = new(() => EmbeddedTable.Read(TypedTables.Messages));

    /// <summary>The rows; empty where the embedded package can't be read, which is said when it is loaded.</summary>
    public static IReadOnlyList<MessageRow> Read() => Rows.Value;
}
