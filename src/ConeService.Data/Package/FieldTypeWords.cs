namespace ConeService.Data;

/// <summary>How datapackage.json writes a <see cref="FieldType"/>.</summary>
internal static class FieldTypeWords
{
    public static string Word(this FieldType type) => type switch
    {
        FieldType.Number => "number",
        FieldType.Integer => "integer",
        FieldType.List => "list",
        _ => "string",
    };
}
