using ConeService.Data;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>A firing that may be suggested.</summary>
/// <param name="Index">Its place on the menu.</param>
/// <param name="Firing">The firing.</param>
/// <param name="Kiln">The kiln in which it is asked.</param>
/// <param name="IsUsual">True when studios usually run it, or when it was offered.</param>
internal sealed record MenuItem(int Index, PlannedFiring Firing, Kiln Kiln, bool IsUsual);

/// <summary>
/// What may be suggested: the firings offered in the kilns there are, or where nothing is said of them any whole cone in a kiln that
/// suits, of which only the usual ones are suggested as long as they will do.
/// </summary>
internal sealed class FiringMenu
{
    private readonly ILookup<FiringKind, MenuItem> byKind;

    private FiringMenu(LoadTables tables, IEnumerable<(PlannedFiring Firing, Kiln Kiln)> firings, bool offered)
    {
        Items = [.. firings.Select((f, i) => new MenuItem(
            i, f.Firing, f.Kiln, offered || tables.IsUsual(f.Firing.Kind, f.Firing.Cone, f.Firing.Atmosphere)))];
        byKind = Items.ToLookup(i => i.Firing.Kind);
    }

    /// <summary>All of it.</summary>
    public IReadOnlyList<MenuItem> Items { get; }

    /// <summary>The firings of a kind.</summary>
    public IEnumerable<MenuItem> Of(FiringKind kind) => byKind[kind];

    /// <summary>Every whole cone, atmosphere and kind, in kilns that suit them.</summary>
    public static FiringMenu Usual(LoadTables tables) => new(tables, AnyFiring(tables), offered: false);

    /// <summary>What may be suggested for a load.</summary>
    public static FiringMenu Of(LoadTables tables, Load load)
    {
        if (load is { Kilns.Count: 0, Offered.Count: 0 }) return tables.Menu;
        var offered = load.Offered.Count > 0;
        var firings = offered ? load.Offered : tables.Menu.Items.Select(i => i.Firing);
        return new(tables, firings.SelectMany(f => In(tables, load, f).Select(k => (f, k))), offered);
    }

    private static IEnumerable<Kiln> In(LoadTables tables, Load load, PlannedFiring firing) => load.Kilns.Count == 0
        ? [KilnSuitability.Suiting(tables, firing.Needs, firing.Atmosphere)]
        : load.Kilns.Prepend(load.Kiln).Where(k => KilnSuitability.CanFire(tables, k, firing));

    private static IEnumerable<(PlannedFiring Firing, Kiln Kiln)> AnyFiring(LoadTables tables)
    {
        foreach (var kind in Enum.GetValues<FiringKind>())
        {
            var needs = tables.Kind(kind);
            foreach (var atmosphere in needs.Row.Atmospheres)
            {
                var kiln = KilnSuitability.Suiting(tables, needs, atmosphere);
                for (var step = needs.Min.Step; step <= needs.Max.Step; step++)
                    yield return (new(needs, tables.PotterScale.Whole[step], atmosphere), kiln);
            }
        }
    }
}
