namespace ConeService.Data;

/// <summary>What a base contains, a colour note needs or a colour rule names is a colorant or an additive, and no id is both.</summary>
internal sealed class IngredientKnownRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["additives", "base-glazes", "colorants", "colour-notes", "colour-rule-ingredients"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var known = content.Rows(TypedTables.Colorants).Select(c => c.Row.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var twice in content.Rows(TypedTables.Additives).Where(a => !known.Add(a.Row.Id)))
            yield return twice.Fault("id", FaultRules.IngredientKnown, $"is '{twice.Row.Id}', the id of a colorant");
        foreach (var (fault, id) in Named(content).Where(n => !known.Contains(n.Id)))
            yield return fault with { Reason = $"names '{id}'; it must be id of a row of colorants or additives" };
    }

    private static IEnumerable<(PackageFault Fault, string Id)> Named(PackageContent content) =>
    [
        .. content.Rows(TypedTables.BaseGlazes).SelectMany(b => b.Row.Contains.Select(id => (Fault(b, "contains"), id))),
        .. content.Rows(TypedTables.ColourNotes).SelectMany(n => n.Row.Needs.Select(id => (Fault(n, "needs"), id))),
        .. content.Rows(TypedTables.ColourRuleIngredients).Select(r => (Fault(r, "ingredient"), r.Row.Ingredient)),
    ];

    private static PackageFault Fault<T>(Located<T> at, string field) => at.Fault(field, FaultRules.IngredientKnown, "");
}
