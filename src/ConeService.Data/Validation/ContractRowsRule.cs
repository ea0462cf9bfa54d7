namespace ConeService.Data;

/// <summary>
/// Rows that the load check looks up by name must be there: each kiln heat, each kind of firing, each rule it applies, each
/// caution it raises.
/// </summary>
internal sealed class ContractRowsRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["kiln-heats", "firing-kinds", "load-rules", "cautions"];

    public IEnumerable<PackageFault> Check(PackageContent content) =>
        Missing(content, "kiln-heats", EnumWords.All<KilnHeat>(), content.Rows(TypedTables.KilnHeats).Select(r => EnumWords.Word(r.Row.Id)))
            .Concat(Missing(content, "firing-kinds", EnumWords.All<FiringKind>(),
                content.Rows(TypedTables.FiringKinds).Select(r => EnumWords.Word(r.Row.Id))))
            .Concat(Missing(content, "load-rules", LoadRuleIds.All, content.Rows(TypedTables.LoadRules).Select(r => r.Row.Id)))
            .Concat(Missing(content, "cautions", LoadCautionIds.All, content.Rows(TypedTables.Cautions).Select(r => r.Row.Id)));

    private static IEnumerable<PackageFault> Missing(PackageContent content, string table, IEnumerable<string> needed,
        IEnumerable<string> present)
    {
        if (!content.Has(table))
            yield break;
        var missing = needed.Except(present).ToList();
        if (missing.Count > 0)
            yield return new PackageFault(content.Packages[0].Name, content.Tables[table].Schema.Path, null, "id", FaultRules.ContractRows,
                $"lacks {string.Join(", ", missing)}; the load check looks them up");
    }
}
