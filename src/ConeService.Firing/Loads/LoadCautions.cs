using ConeService.Contract.Loads;
using ConeService.Data;

namespace ConeService.Firing.Loads;

/// <summary>The cautions that a load raises: of the kiln, of the firing, and of what is in it; each once.</summary>
internal static class LoadCautions
{
    public static IReadOnlyList<LoadCaution> Of(LoadTables tables, Load load, IReadOnlyList<PieceClass> classes)
    {
        var ids = new HashSet<string>(StringComparer.Ordinal);
        foreach (var id in tables.Heat(load.Kiln.Heat).Cautions)
        {
            if (IsBroughtOn(load, id)) ids.Add(id);
        }

        var raw = classes.Any(c => c.First.State <= PieceState.BoneDry);
        ids.UnionWith(load.Firing.Needs.Row.Cautions.Where(id => id != LoadCautionIds.Steam || raw));
        if (load.Firing.IsReduction) ids.Add(LoadCautionIds.CarbonMonoxide);
        // A vapour kiln has burners as a gas kiln has.
        if (load.Firing.IsReduction && load.Kiln.Heat is (KilnHeat.Gas or KilnHeat.Vapour)) ids.Add(LoadCautionIds.ExplosiveReduction);
        if (load.Firing.IsReduction && load.Kiln.Heat == KilnHeat.Electric && tables.HasCaution(LoadCautionIds.ReductionInElectric))
            ids.Add(LoadCautionIds.ReductionInElectric);
        foreach (var piece in classes.Select(c => c.First))
        {
            if (piece.Body is { Cautions: { Count: > 0 } ofBody }) ids.UnionWith(ofBody);
            foreach (var coat in piece.Coats)
            {
                ids.UnionWith(coat.Coat.Cautions);
                if (coat.GivesOff.Has(Fume.Chrome)) ids.Add(LoadCautionIds.Chrome);
                if (coat.GivesOff.Has(Fume.Copper)) ids.Add(LoadCautionIds.Copper);
                if (coat.GivesOff.Has(Fume.Manganese)) ids.Add(LoadCautionIds.Manganese);
                if (coat.GivesOff.Has(Fume.Lead) || coat.Contains.Has(Fume.Cadmium)) ids.Add(LoadCautionIds.Lead);
                if (coat.Contains.Has(Fume.Barium)) ids.Add(LoadCautionIds.Barium);
                if (coat.Contains.Has(Fume.Nickel)) ids.Add(LoadCautionIds.Nickel);
                if (coat.Contains.Has(Fume.Vanadium)) ids.Add(LoadCautionIds.Vanadium);
                // Zinc leaves the glaze in reduction only.
                if (coat.Contains.Has(Fume.Zinc) && load.Firing.IsReduction) ids.Add(LoadCautionIds.Zinc);
            }
        }

        return [.. ids.Select(tables.Caution)
            .OrderByDescending(c => c.Severity).ThenBy(c => c.Id, StringComparer.Ordinal)
            .Select(c => new LoadCaution(c.Id, c.Hazard, c.Severity, c.When, c.Control, c.Sources))];
    }

    // What an electric kiln may do at any time stands in the cautions; here what this firing asks of it: its highest cone, or to be
    // opened while it is hot. A flame brings its own.
    private static bool IsBroughtOn(Load load, string id) => load.Kiln.Heat != KilnHeat.Electric || id switch
    {
        LoadCautionIds.OverTemperature => load.Firing.Cone.Order >= load.Kiln.MaxOrder,
        LoadCautionIds.ElectricShock => load.Firing.Kind == FiringKind.Raku,
        _ => false,
    };
}
