using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Materials;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Materials;

/// <summary>Describes bodies, coats, rules and disagreements, with filters.</summary>
internal sealed class MaterialCatalogue
{
    private readonly Dataset dataset;
    private readonly ConeMarks marks;
    private readonly ILookup<string, DisagreementRow> disagreements;

    /// <summary>Makes the catalogue of a data package.</summary>
    public MaterialCatalogue(ConeCharts charts)
    {
        dataset = charts.Dataset;
        marks = new(charts.Scale);
        disagreements = dataset.Disagreements.SelectMany(d => d.Concerns.Select(c => (c, d))).ToLookup(x => x.c, x => x.d, StringComparer.Ordinal);
    }

    /// <summary>Bodies that are mature at a cone and used in an atmosphere; a body whose base clay decides is in every list without a cone.</summary>
    public ClayBodyList Bodies(Cone? cone, Atmosphere? atmosphere)
    {
        var mark = cone is { } c ? marks.Find(c) : null;
        return new(dataset.VersionId, cone?.ToString(), atmosphere, [.. dataset.ClayBodies
            .Where(b => cone is null || (mark is not null && b.MatureConeMin is not null && Within(mark, b.MatureConeMin, b.MatureConeMax)))
            .Where(b => atmosphere is not { } a || b.Atmospheres.Contains(a))
            .Select(b => new ClayBodySummary(b.Id, b.Name, b.Description, new(b.BisqueConeMin, b.BisqueConeMax), b.MatureConeMin is null ? null : new(b.MatureConeMin, b.MatureConeBest, b.MatureConeMax), b.Atmospheres, b.RangeConfidence, b.Sources))]);
    }

    /// <summary>Coats that suit a cone and an atmosphere.</summary>
    public GlazeList Glazes(Cone? cone, Atmosphere? atmosphere)
    {
        var mark = cone is { } c ? marks.Find(c) : null;
        return new(dataset.VersionId, cone?.ToString(), atmosphere, [.. dataset.Glazes
            .Where(g => cone is null || (mark is not null && Within(mark, g.ConeMin, g.ConeMax)))
            .Where(g => atmosphere is not { } a || g.Atmospheres.Contains(a))
            .Select(g => new GlazeSummary(g.Id, g.Name, g.Kind, new(g.ConeMin, g.ConeBest, g.ConeMax), g.Atmospheres, g.FiredIn, g.RunRisk, g.RangeConfidence, g.Sources))]);
    }

    /// <summary>One body.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public ClayBodyRow Body(string id) =>
        Rows.Find(dataset, "clay-bodies", dataset.ClayBodies, b => b.Id, id, "clay body", "/v1/clay-bodies");

    /// <summary>One coat.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public GlazeRow Glaze(string id) =>
        Rows.Find(dataset, "glazes", dataset.Glazes, g => g.Id, id, "glaze or decoration", "/v1/glazes");

    /// <summary>One load rule.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public LoadRuleRow Rule(string id) =>
        Rows.Find(dataset, "load-rules", dataset.LoadRules, r => r.Id, id, "load rule", "/v1/load-rules");

    /// <summary>A body with what happens above it.</summary>
    public ClayBodyDetail Describe(ClayBodyRow row)
    {
        var steps = new (OverfireStep Step, decimal? Cones)[]
        {
            (OverfireStep.Warps, row.WarpConesOverBest), (OverfireStep.Bloats, row.BloatConesOverBest), (OverfireStep.Slumps, row.SlumpConesOverBest), (OverfireStep.Melts, row.MeltConesOverBest),
        };
        return new(dataset.VersionId, row, [.. steps.Where(s => s.Cones is not null).Select(s => new OverfireStepAt(s.Step, s.Cones!.Value, At(row.MatureConeBest!, s.Cones.Value)))], Concerning("clay-bodies", row.Id));
    }

    /// <summary>A coat.</summary>
    public GlazeDetail Describe(GlazeRow row) => new(dataset.VersionId, row, Concerning("glazes", row.Id));

    /// <summary>A load rule.</summary>
    public LoadRuleDetail Describe(LoadRuleRow row) => new(dataset.VersionId, row, Concerning("load-rules", row.Id));

    /// <summary>All load rules.</summary>
    public LoadRuleList Rules() => new(dataset.VersionId, dataset.LoadRules);

    /// <summary>The kinds of firing and the kilns.</summary>
    public FiringKindList Kinds() => new(dataset.VersionId, dataset.FiringKinds, dataset.KilnHeats,
        [.. dataset.Disagreements.Where(d => d.Concerns.Any(c => c.StartsWith("firing-kinds/", StringComparison.Ordinal) || c.StartsWith("kiln-heats/", StringComparison.Ordinal)))]);

    /// <summary>All disagreements.</summary>
    public DisagreementList Disagreements() => new(dataset.VersionId, dataset.Disagreements);

    private IReadOnlyList<DisagreementRow> Concerning(string table, string id) => [.. disagreements[$"{table}/{id}"]];

    private bool Within(ConeMark cone, string min, string? max) => cone.Order >= marks.Of(min).Order && (max is null || cone.Order <= marks.Of(max).Order);

    private string? At(string best, decimal over)
    {
        var step = marks.Of(best).Step + (int)decimal.Ceiling(over);
        return step < marks.Whole.Count ? marks.Whole[step].Text : null;
    }
}
