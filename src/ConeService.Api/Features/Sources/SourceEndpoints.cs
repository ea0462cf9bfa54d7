using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Data;
using ConeService.Firing.Answers;

namespace ConeService.Api.Features.Sources;

/// <summary>The bibliography.</summary>
internal static class SourceEndpoints
{
    public static void MapSources(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/sources", List).WithQuery().Describe("listSources", Tags.Data).Answers<SourceList>();
        routes.MapRead("/sources/{id}", One).WithQuery().Describe("getSource", Tags.Data).Answers<SourceDetail>().Problems(404);
    }

    /// <summary>The bibliography.</summary>
    /// <remarks>Every source that a value names, and how much of it was seen.</remarks>
    internal static IResult List(SnapshotHolder snapshots) =>
        snapshots.Current.Prepare("sources", 0, static (s, _) => JsonBody.Cacheable(new SourceList(s.Dataset.VersionId, s.Dataset.Sources)));

    /// <summary>One source.</summary>
    /// <remarks>The source and how many rows of each table cite it.</remarks>
    /// <param name="id">Id of the source, as answers name it.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult One(string id, SnapshotHolder snapshots)
    {
        var snapshot = snapshots.Current;
        var current = snapshot.Dataset.CurrentId("sources", id);
        var source = snapshot.Dataset.Sources.FirstOrDefault(s => s.Id == current) ?? throw Unknown(id, snapshot.Dataset);
        return snapshot.Prepare("source/" + source.Id, source, static (s, row) => JsonBody.Cacheable(new SourceDetail(s.Dataset.VersionId, row, Uses(s.Dataset, row.Id))));
    }

    private static List<SourceUse> Uses(Dataset data, string id) =>
        [.. new[]
        {
            new SourceUse("additives", data.Additives.Count(r => r.Sources.Contains(id))),
            new SourceUse("base-glazes", data.BaseGlazes.Count(r => r.Sources.Contains(id))),
            new SourceUse("bending-energies", data.BendingEnergies.Count(r => r.Source == id)),
            new SourceUse("cautions", data.Cautions.Count(r => r.Sources.Contains(id))),
            new SourceUse("charts", data.Charts.Count(r => r.Source == id)),
            new SourceUse("clay-bodies", data.ClayBodies.Count(r => r.Sources.Contains(id))),
            new SourceUse("colorant-forms", data.ColorantForms.Count(r => r.Sources.Contains(id))),
            new SourceUse("colorants", data.Colorants.Count(r => r.Sources.Contains(id))),
            new SourceUse("colour-notes", data.ColourNotes.Count(r => r.Sources.Contains(id))),
            new SourceUse("colour-rule-ingredients", data.ColourRuleIngredients.Count(r => r.Sources.Contains(id))),
            new SourceUse("colour-rules", data.ColourRules.Count(r => r.Sources.Contains(id))),
            new SourceUse("colour-words", data.ColourWords.Count(r => r.Sources.Contains(id))),
            new SourceUse("cone-facts", data.ConeFacts.Count(r => r.Sources.Contains(id))),
            new SourceUse("cones", data.Cones.Count(r => r.Sources.Contains(id))),
            new SourceUse("corrections", data.Corrections.Count(r => r.Sources.Contains(id))),
            new SourceUse("disagreements", data.Disagreements.Count(r => r.Sources.Contains(id))),
            new SourceUse("end-points", data.EndPoints.Count(r => r.Source == id)),
            new SourceUse("exposure-limits", data.ExposureLimits.Count(r => r.Sources.Contains(id))),
            new SourceUse("firing-kinds", data.FiringKinds.Count(r => r.Sources.Contains(id))),
            new SourceUse("food-contact-limits", data.FoodContactLimits.Count(r => r.Sources.Contains(id))),
            new SourceUse("glazes", data.Glazes.Count(r => r.Sources.Contains(id))),
            new SourceUse("kiln-heats", data.KilnHeats.Count(r => r.Sources.Contains(id))),
            new SourceUse("landmarks", data.Landmarks.Count(r => r.Sources.Contains(id))),
            new SourceUse("load-rules", data.LoadRules.Count(r => r.Sources.Contains(id))),
            new SourceUse("process-additions", data.ProcessAdditions.Count(r => r.Sources.Contains(id))),
            new SourceUse("processes", data.Processes.Count(r => r.Sources.Contains(id))),
            new SourceUse("temperature-limits", data.TemperatureLimits.Count(r => r.Sources.Contains(id))),
        }.Where(u => u.Rows > 0)];

    private static RefusedException Unknown(string id, Dataset data)
    {
        var near = NearMatches.Find(id, data.Sources.Select(s => s.Id));
        return new(new Finding("not-found", "id", id, $"There is no source “{id}”.", near, near.Count > 0 ? $"Probably {near[0]}." : "All sources are listed at /v1/sources."));
    }
}
