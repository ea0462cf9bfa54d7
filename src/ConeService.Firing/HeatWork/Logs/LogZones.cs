using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>Cleans the thermocouples of a log, one or several, and leaves out those that gave no firing.</summary>
/// <param name="columns">The columns of the log.</param>
internal sealed class LogZones(LogColumns columns)
{
    // Zones of a kiln differ by tens of degrees; what differs by more is in another place.
    private const double MostSpread = 150;

    /// <summary>Cleans them.</summary>
    /// <param name="samples">Samples of each column; null where it had none.</param>
    /// <param name="gaps">Cells of each column without a reading.</param>
    /// <param name="times">The times, which are resolved first.</param>
    /// <exception cref="RefusedException">No column can be used, or what they say lies too far apart.</exception>
    public CleanLog Clean(LogSamples?[] samples, LogGaps[] gaps, LogTimes times)
    {
        var (zones, dead) = (new List<(string Column, CleanLog Log)>(), new List<string>());
        RefusedException? refused = null;
        for (var zone = 0; zone < samples.Length; zone++)
        {
            var name = columns.Temperatures[zone].Name;
            try
            {
                if (samples[zone] is not { } of) dead.Add(name);
                else zones.Add((name, Clean(of, gaps[zone], times)));
            }
            catch (RefusedException cannot)
            {
                refused ??= cannot;
                dead.Add(name);
            }
        }

        if (zones.Count == 0)
        {
            throw refused ?? new RefusedException(new Finding(
                FindingCodes.LogEmpty, "", null, Message.Of("logs.no-samples"), [Message.Of("logs.two-samples")]));
        }

        if (columns.Temperatures.Count == 1) return zones[0].Log;
        var hottest = zones.Max(z => z.Log.History.Peak.Kelvin);
        // What never was in the fire, a cold junction say, is no zone.
        dead.AddRange(zones.Where(z => IsCold(z.Log, hottest)).Select(z => z.Column));
        zones.RemoveAll(z => IsCold(z.Log, hottest));
        if (hottest - zones.Min(z => z.Log.History.Peak.Kelvin) > MostSpread)
        {
            throw new RefusedException(new Finding(
                FindingCodes.CsvHeaders, "line 1", string.Join(", ", zones.Select(z => z.Column)),
                Message.Of("logs.zones-too-far-apart", ("spread", hottest - zones.Min(z => z.Log.History.Peak.Kelvin))),
                Message.Verbatim(zones.Select(z => $"?temperatureColumn={Uri.EscapeDataString(z.Column)}"))));
        }

        return zones[0].Log with { Zones = zones, Dead = dead };
    }

    private static bool IsCold(CleanLog log, double hottest) =>
        log.History.Peak.Kelvin - Temperature.KelvinAtZero < 120 && hottest - Temperature.KelvinAtZero > 300;

    private static CleanLog Clean(LogSamples of, LogGaps gaps, LogTimes times)
    {
        var found = new List<HeatWarning>();
        times.Resolve(of.Taken, of.FieldOf, found);
        if (gaps.Count > 0) found.Add(gaps.Warning());
        var log = of.Clean();
        return log with { Warnings = [.. found, .. log.Warnings] };
    }
}
