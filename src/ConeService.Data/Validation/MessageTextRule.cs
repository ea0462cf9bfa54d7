namespace ConeService.Data;

/// <summary>Every message can be put into words: its text is of the syntax, and every language names the parameters of the
/// English text.</summary>
internal sealed class MessageTextRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["messages"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var english = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal);
        foreach (var at in content.Rows(TypedTables.Messages).OrderByDescending(r => r.Row.Language == "en"))
        {
            if (Read(at.Row.Text, out var template) is { } reason)
            {
                yield return at.Fault("text", FaultRules.MessageText, reason);
                continue;
            }

            if (at.Row.Language == "en")
                english.TryAdd(at.Row.Code, template!.Parameters);
            else if (!english.TryGetValue(at.Row.Code, out var parameters))
                yield return at.Fault("code", FaultRules.MessageText, $"is {at.Row.Code}, which has no English text");
            else if (template!.Parameters.Except(parameters).ToList() is { Count: > 0 } unknown)
                yield return at.Fault(
                    "text", FaultRules.MessageText,
                    $"names {string.Join(", ", unknown)}; the English text has {string.Join(", ", parameters)}");
        }
    }

    private static string? Read(string text, out MessageTemplate? template)
    {
        template = null;
        try
        {
            template = MessageTemplate.Parse(text);
            return null;
        }
        catch (FormatException malformed)
        {
            return malformed.Message;
        }
    }
}
