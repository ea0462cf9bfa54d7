using System.Globalization;

namespace ConeService.Data;

/// <summary>
/// A cone's number says where it stands; position, kind and whole step must say the same, and no whole cone may be missing.
/// </summary>
internal sealed class ConePositionRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["cones"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var cones = content.Rows(TypedTables.Cones);
        foreach (var at in cones)
        {
            if (ConeNumber.Parse(at.Row.Id) is not { } says)
            {
                yield return at.Fault("id", FaultRules.ConePosition,
                    $"is '{at.Row.Id}', which is no cone: there is no cone 0, and no second leading zero");
                continue;
            }

            if (at.Row.Position != says.Position)
                yield return Fault(at, "position", at.Row.Position, says.Position);
            if (at.Row.Kind != says.Kind)
                yield return Fault(at, "kind", at.Row.Kind, says.Kind);
            if (at.Row.WholeStep != says.WholeStep)
                yield return Fault(at, "whole_step", at.Row.WholeStep, says.WholeStep);
        }

        var missing = Enumerable.Range(0, ConeNumber.WholeCones)
            .Where(step => !cones.Any(c => ConeNumber.Parse(c.Row.Id)?.WholeStep == step)).ToList();
        if (missing.Count > 0)
            yield return new PackageFault(content.Packages[0].Name, content.Tables["cones"].Schema.Path, null, "whole_step",
                FaultRules.ConePosition, $"lacks the steps {string.Join(", ", missing)}; the whole cones 022 to 14 must be there, or "
                + $"distances in whole cones are wrong");
    }

    private static PackageFault Fault(Located<ConeRow> at, string field, object? found, object? expected) =>
        at.Fault(field, FaultRules.ConePosition,
            string.Create(CultureInfo.InvariantCulture,
            $"is {found ?? "blank"}; for the cone {at.Row.Id} it must be {expected ?? "blank"}"));
}
