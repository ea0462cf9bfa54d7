using ConeService.Contract.Schedules;
using ConeService.Data;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>The cautions that belong to a firing, the worst first.</summary>
internal static class FitCautions
{
    private static readonly WorkStage[] Stages = [WorkStage.Loading, WorkStage.Firing, WorkStage.Cooling, WorkStage.Opening];

    /// <summary>The cautions.</summary>
    public static IReadOnlyList<FitCaution> For(Dataset dataset, FitQuestion question)
    {
        var words = Words(question).ToHashSet(StringComparer.Ordinal);
        // Reduction in an electric kiln is a caution of its own, and only where both come together.
        var both = words.Contains("reduction") && words.Contains("electric-kiln");
        return [.. dataset.Cautions
            .Where(c => c.Stages.Any(Stages.Contains) && c.AppliesTo.Any(words.Contains))
            .Where(c => both || !(c.AppliesTo.Contains("reduction") && c.AppliesTo.Contains("electric-kiln")))
            .OrderByDescending(c => c.Severity).ThenBy(c => c.Id, StringComparer.Ordinal)
            .Select(c => new FitCaution(c.Id, c.Hazard, c.Severity, c.When, c.Control, c.Sources))];
    }

    private static IEnumerable<string> Words(FitQuestion question)
    {
        var row = question.Schedule.Row;
        yield return "every-kiln";
        var heat = question.Heat ?? row.KilnHeats[0];
        if (heat == KilnHeat.Electric) yield return "electric-kiln";
        if (heat is KilnHeat.Gas or KilnHeat.Raku or KilnHeat.Vapour) yield return "gas-kiln";
        if (heat == KilnHeat.Wood) yield return "wood-kiln";
        var reduces = question.Schedule.Segments.Any(s => s is { Atmosphere: Atmosphere.Reduction, Stage: not FiringStage.PostFiring });
        if (reduces || row.Atmosphere == Atmosphere.Reduction) yield return "reduction";
        if (question.Greenware) yield return "bisque";
        if (row.Kind is FiringKind.Glaze or FiringKind.Single or FiringKind.Salt or FiringKind.Soda or FiringKind.Wood)
            yield return "glaze-firing";
        if (row.Id.Contains("lustre", StringComparison.Ordinal)) yield return "lustre";
        yield return row.Kind switch
        {
            FiringKind.Overglaze => "overglaze",
            FiringKind.Raku => "raku",
            FiringKind.Salt => "salt",
            FiringKind.Soda => "soda",
            FiringKind.Pit => "pit",
            FiringKind.Saggar => "saggar",
            _ => "every-kiln",
        };
    }
}
