using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.HeatWork.Forecasting;

/// <summary>What can hurt people or ware when a firing goes on, is restarted, and is opened.</summary>
internal static class ForecastCautions
{
    // Opening and firing, whatever heats the kiln.
    private static readonly string[] Always = ["fire-in-kiln-room", "kiln-over-temperature", "thermal-shock-fragments"];
    private static readonly string[] Restarting = ["steam-explosion-of-ware"];

    /// <summary>Hazards from the data package, the worst first.</summary>
    public static IReadOnlyList<FitCaution> Of(Dataset dataset, KilnHeat? heat, bool restarts)
    {
        var ids = Always.Concat(restarts ? Restarting : []).Concat(heat switch
        {
            KilnHeat.Electric => ["electric-shock"],
            null or KilnHeat.Wood => [],
            _ => restarts ? ["carbon-monoxide", "gas-kiln-ignition"] : (string[])["carbon-monoxide"],
        }).ToHashSet(StringComparer.Ordinal);
        return [.. dataset.Cautions.Where(c => ids.Contains(c.Id))
            .OrderByDescending(c => c.Severity).ThenBy(c => c.Id, StringComparer.Ordinal)
            .Select(c => new FitCaution(c.Id, c.Hazard, c.Severity, c.When, c.Control, c.Sources))];
    }

    /// <summary>What holds for every answer, and for every restart.</summary>
    public static IReadOnlyList<Message> Notes(bool modelled, bool restarts)
    {
        List<Message> notes =
        [
            Message.Of("forecast.note-witness"), Message.Of("forecast.note-span", ("kiln", modelled ? "modelled" : "none")),
            Message.Of("forecast.note-opening"),
        ];
        if (restarts)
        {
            notes.AddRange(
            [
                Message.Of("forecast.note-green"), Message.Of("forecast.note-quartz"), Message.Of("forecast.note-shock"),
                Message.Of("forecast.note-cause"),
            ]);
        }

        notes.Add(Message.Of("forecast.note-codes"));
        return notes;
    }
}
