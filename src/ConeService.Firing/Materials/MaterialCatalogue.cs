using ConeService.Contract.Answers;
using ConeService.Contract.Materials;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Materials;

/// <summary>Lists bodies and coats, all or those that suit a cone and an atmosphere, and describes each.</summary>
internal sealed class MaterialCatalogue
{
    private readonly Dataset dataset;
    private readonly PotterScale scale;
    private readonly DisagreementIndex disagreements;

    /// <summary>Makes the catalogue of a data package.</summary>
    public MaterialCatalogue(ConeCharts charts)
    {
        dataset = charts.Dataset;
        scale = new(charts.Scale);
        disagreements = new(dataset);
    }

    /// <summary>
    /// Bodies that are mature at a cone and used in an atmosphere; a body whose base clay decides is in every list without a cone.
    /// </summary>
    public ClayBodyList Bodies(MaterialFilter filter) => new(
        dataset.VersionId,
        filter.Cone?.ToString(),
        filter.Atmosphere,
        [.. dataset.ClayBodies
            .Where(b => Suits(filter, b.MatureConeMin, b.MatureConeMax, b.Atmospheres))
            .Select(MaterialAnswers.Summary)]);

    /// <summary>Coats that suit a cone and an atmosphere.</summary>
    public GlazeList Glazes(MaterialFilter filter) => new(
        dataset.VersionId,
        filter.Cone?.ToString(),
        filter.Atmosphere,
        [.. dataset.Glazes.Where(g => Suits(filter, g.ConeMin, g.ConeMax, g.Atmospheres)).Select(MaterialAnswers.Summary)]);

    /// <summary>A body with what happens above it.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public ClayBodyDetail Body(string id)
    {
        var row = Rows.Find(dataset, "clay-bodies", dataset.ClayBodies, b => b.Id, id, "clay body", "/v1/clay-bodies");
        var steps = new (OverfireStep Step, decimal? Over)[]
        {
            (OverfireStep.Warps, row.WarpConesOverBest),
            (OverfireStep.Bloats, row.BloatConesOverBest),
            (OverfireStep.Slumps, row.SlumpConesOverBest),
            (OverfireStep.Melts, row.MeltConesOverBest),
        };
        return new(
            dataset.VersionId,
            MaterialAnswers.Of(row, dataset),
            [.. steps
                .Where(s => s.Over is not null)
                .Select(s => new OverfireStepAt(s.Step, s.Over!.Value, At(row.MatureConeBest!, s.Over.Value)))],
            disagreements.Concerning("clay-bodies", row.Id));
    }

    /// <summary>A coat.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public GlazeDetail Glaze(string id)
    {
        var row = Rows.Find(dataset, "glazes", dataset.Glazes, g => g.Id, id, "glaze or decoration", "/v1/glazes");
        return new(dataset.VersionId, MaterialAnswers.Of(row, dataset), disagreements.Concerning("glazes", row.Id));
    }

    private bool Suits(MaterialFilter filter, string? min, string? max, IReadOnlyList<Atmosphere> atmospheres)
    {
        if (filter.Atmosphere is { } atmosphere && !atmospheres.Contains(atmosphere)) return false;
        if (filter.Cone is not { } asked) return true;
        return scale.Find(asked) is { } cone && min is not null
            && cone.Order >= scale.Of(min).Order && (max is null || cone.Order <= scale.Of(max).Order);
    }

    private string? At(string best, decimal over)
    {
        var step = scale.Of(best).Step + (int)decimal.Ceiling(over);
        return step < scale.Whole.Count ? scale.Whole[step].Text : null;
    }
}
