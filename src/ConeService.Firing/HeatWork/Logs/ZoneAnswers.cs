using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>
/// Answers a log of several thermocouples: by the one with the least heat work, since a load is as fired as its coolest place, and
/// with what each of them says.
/// </summary>
internal static class ZoneAnswers
{
    /// <summary>Follows every thermocouple.</summary>
    public static HeatWorkResult Answer(HeatWorkCalculator calculator, CleanLog log, HeatSettings settings, bool fahrenheit)
    {
        var results = log.Zones
            .Select(z => (z.Column, Result: calculator.Answer(z.Log with { Zones = [] }, settings, fahrenheit)))
            .OrderBy(z => Work(z.Result.Answer)).ToList();
        var (decided, coolest) = results[0];
        var spread = Math.Round(Margin(results[^1].Result.Answer, coolest.Answer) - Margin(coolest.Answer, coolest.Answer), 2);
        var zones = results.Select(z => Zone(z.Column, z.Result.Answer)).ToList();
        // What was found in the log as a whole stands with the first thermocouple read.
        var shared = log.Warnings.Where(w => coolest.Answer.Warnings.All(have => have.Code != w.Code));
        var warnings = coolest.Answer.Warnings.Concat(shared).ToList();
        warnings.Add(HeatWarning.Of(
            WarningCodes.ZonesDiffer,
            Message.Of(
                "logs.zones", ("count", results.Count), ("decided", decided), ("spread", spread),
                ("dead", log.Dead.ToArray()), ("any", log.Dead.Count > 0 ? "yes" : "no"))));
        var summary = coolest.Answer.Log! with { DecidedBy = decided, SpreadCelsiusDifference = spread, Zones = zones };
        return coolest with { Answer = coolest.Answer with { Log = summary, Warnings = warnings } };
    }

    private static LogZoneResult Zone(string column, HeatWorkAnswer answer) => new(
        column, answer.Reached, answer.Next, answer.Fraction, answer.Reading, answer.PeakCelsius, answer.Log!.Used);

    // All histories are followed with the cones of one chart, so that any cone puts them in the same order.
    private static double Work(HeatWorkAnswer answer) => answer.Cones.Sum(c => c.MarginCelsiusDifference);

    // The margin of the cone that decides.
    private static double Margin(HeatWorkAnswer answer, HeatWorkAnswer decided)
    {
        var cone = decided.Reached ?? decided.Next!;
        return answer.Cones.First(c => c.Cone == cone).MarginCelsiusDifference;
    }
}
