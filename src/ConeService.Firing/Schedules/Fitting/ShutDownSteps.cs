using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>
/// How a firing is ended that no controller ends: practice of the trade, under the kiln's manual, local codes and licensed practice.
/// </summary>
internal static class ShutDownSteps
{
    /// <summary>The steps, in order; empty for an electric kiln.</summary>
    public static IReadOnlyList<Message> Of(FitQuestion question)
    {
        var row = question.Schedule.Row;
        var heat = question.Heat ?? row.KilnHeats[0];
        return [.. Steps(row.Kind, heat)];
    }

    private static IEnumerable<Message> Steps(FiringKind kind, KilnHeat heat)
    {
        if (kind == FiringKind.Pit)
        {
            yield return Message.Of("schedules.end-pit");
            yield return Message.Of("schedules.end-first");
            yield break;
        }

        if (kind == FiringKind.Raku) yield return Message.Of("schedules.end-draw");
        if (kind is FiringKind.Salt or FiringKind.Soda) yield return Message.Of("schedules.end-clear-vapour");
        if (heat is KilnHeat.Gas or KilnHeat.Raku or KilnHeat.Vapour) yield return Message.Of("schedules.end-burners");
        if (heat == KilnHeat.Wood) yield return Message.Of("schedules.end-wood");
        if (heat == KilnHeat.Electric) yield break;
        if (kind != FiringKind.Raku) yield return Message.Of("schedules.end-close");
        yield return Message.Of("schedules.end-first");
    }
}
