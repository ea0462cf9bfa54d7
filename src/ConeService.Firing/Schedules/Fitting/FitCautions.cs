using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing.Loads;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>The cautions that belong to a firing, the worst first: those for which this firing gives cause.</summary>
internal static class FitCautions
{
    // Infrared-glare of the cautions: above about 800 °C. Sulphur and fluorine leave the clay above 400 °C (sulphur-dioxide).
    private const double GlareCelsius = 800;
    private const double BurnOutCelsius = 400;

    private static readonly WorkStage[] Stages = [WorkStage.Loading, WorkStage.Firing, WorkStage.Cooling, WorkStage.Opening];

    /// <summary>The cautions.</summary>
    /// <param name="dataset">The data package.</param>
    /// <param name="question">The firing.</param>
    /// <param name="peakCelsius">Its peak, °C.</param>
    public static IReadOnlyList<FitCaution> For(Dataset dataset, FitQuestion question, double peakCelsius)
    {
        var words = Words(question, peakCelsius).ToHashSet(StringComparer.Ordinal);
        // Reduction in an electric kiln is a caution of its own, and only where both come together.
        var both = words.Contains("reduction") && words.Contains("electric-kiln");
        return [.. dataset.Cautions
            .Where(c => c.Stages.Any(Stages.Contains) && c.AppliesTo.Any(words.Contains))
            .Where(c => both || !(c.AppliesTo.Contains("reduction") && c.AppliesTo.Contains("electric-kiln")))
            // A gas kiln that is never reduced gives no cause to speak of the start of reduction.
            .Where(c => c.Id != LoadCautionIds.ExplosiveReduction || words.Contains("reduction"))
            .OrderByDescending(c => c.Severity).ThenBy(c => c.Id, StringComparer.Ordinal)
            .Select(c => new FitCaution(c.Id, c.Hazard, c.Severity, c.When, c.Control, c.Sources))];
    }

    /// <summary>True where the chamber is reduced; what smokes in a bin, a saggar or under earth is no reduction of the kiln.</summary>
    public static bool Reduces(FitQuestion question) =>
        question.Schedule.Segments.Any(s => s is { Atmosphere: Atmosphere.Reduction, Stage: not FiringStage.PostFiring });

    private static IEnumerable<string> Words(FitQuestion question, double peak)
    {
        var row = question.Schedule.Row;
        var heat = question.Heat ?? row.KilnHeats[0];
        // A closed kiln in a room or shed; raku and pits are drawn or dug out, and stand outdoors.
        if (row.Kind is not (FiringKind.Raku or FiringKind.Pit)) yield return "every-kiln";
        if (heat == KilnHeat.Electric) yield return "electric-kiln";
        if (heat is KilnHeat.Gas or KilnHeat.Raku or KilnHeat.Vapour) yield return "gas-kiln";
        if (heat == KilnHeat.Wood) yield return "wood-kiln";
        if (peak > GlareCelsius && row.Kind != FiringKind.Pit) yield return "hot-kiln";
        if (Reduces(question)) yield return "reduction";
        if (question.Greenware) yield return "greenware";
        if (question.Greenware && peak > BurnOutCelsius) yield return "bisque";
        if (row.Kind is FiringKind.Glaze or FiringKind.Single or FiringKind.Salt or FiringKind.Soda or FiringKind.Wood)
            yield return "glaze-firing";
        foreach (var own in new[] { "lustre", "crystalline" })
        {
            if (row.Id.Contains(own, StringComparison.Ordinal)) yield return own;
        }

        if (row.Kind is FiringKind.Overglaze or FiringKind.Raku or FiringKind.Salt
            or FiringKind.Soda or FiringKind.Pit or FiringKind.Saggar)
            yield return EnumWords.Word(row.Kind);
    }
}
