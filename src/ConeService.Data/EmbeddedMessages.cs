namespace ConeService.Data;

/// <summary>The messages of the embedded package, read without the rest of it: sentences are needed before and without a package.</summary>
public static class EmbeddedMessages
{
    private static readonly Lazy<IReadOnlyList<MessageRow>> Rows = new(() => EmbeddedTable.Read(TypedTables.Messages));

    private static readonly Lazy<IReadOnlyList<TextRow>> Told = new(() => EmbeddedTable.Read(TypedTables.Texts));

    /// <summary>The rows; empty where the embedded package can't be read, which is said when it is loaded.</summary>
    public static IReadOnlyList<MessageRow> Read() => Rows.Value;

    /// <summary>The rows of other tables as the embedded package tells them to its readers.</summary>
    public static IReadOnlyList<TextRow> ReadTexts() => Told.Value;
}
