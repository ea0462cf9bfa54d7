using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>Puts the samples of a log in order and takes out what cannot be; says what it did.</summary>
internal static class LogCleaner
{
    private const double MostLateShare = 0.01;
    private const int AlwaysTolerated = 3;

    /// <summary>Cleans the samples in place.</summary>
    /// <param name="samples">The samples as they came; the history keeps this memory.</param>
    /// <param name="fieldOf">Names a sample in findings, by its place among those sent.</param>
    public static CleanLog Clean(Memory<HeatPoint> samples, Func<int, string> fieldOf)
    {
        var points = samples.Span;
        var warnings = new List<HeatWarning>();
        Order(points, fieldOf, warnings);
        var merged = MergeDuplicates(points, warnings);
        if (merged < 2)
        {
            throw new RefusedException(new Finding(
                FindingCodes.LogTooShort, fieldOf(0), null, Message.Of("logs.one-moment"), [Message.Of("logs.two-times")],
                Message.Of("logs.wrong-time-column")));
        }

        var last = points[merged - 1].Hours;
        if (last > LogSamples.LongestHours)
        {
            throw new RefusedException(new Finding(
                FindingCodes.LogTimeUnreadable, fieldOf(points.Length - 1), null, Message.Of("logs.too-long", ("hours", last)),
                [LogSamples.HoursAllowed], Message.Of("logs.wrong-time-unit")));
        }

        var kept = SpikeFilter.Remove(points[..merged], warnings);
        var history = new HeatHistory(samples[..kept]);
        SamplingCheck.Warn(history, warnings);
        return new(history, warnings, points.Length, kept);
    }

    /// <summary>Sorts a few late samples and turns a log round that runs newest first; a clock that was set back is refused.</summary>
    private static void Order(Span<HeatPoint> points, Func<int, string> fieldOf, List<HeatWarning> warnings)
    {
        var (latest, descents, firstLate) = (double.NegativeInfinity, 0, -1);
        var late = new List<double>();
        for (var i = 0; i < points.Length; i++)
        {
            if (i > 0 && points[i].Hours < points[i - 1].Hours) descents++;
            if (points[i].Hours < latest)
            {
                late.Add(points[i].Hours);
                if (firstLate < 0) firstLate = i;
            }
            else
            {
                latest = points[i].Hours;
            }
        }

        if (late.Count == 0) return;
        if (descents > 1 && late.Count == points.Length - 1 && descents >= 0.9 * late.Count)
        {
            points.Reverse();
            Rebase(points);
            warnings.Add(HeatWarning.Of(WarningCodes.LogNewestFirst, Message.Of("logs.newest-first")));
            return;
        }

        if (late.Count > Math.Max(AlwaysTolerated, MostLateShare * points.Length))
        {
            throw new RefusedException(new Finding(
                FindingCodes.LogTimeBackwards, fieldOf(firstLate), Minutes(points[firstLate].Hours),
                Message.Of(
                    "logs.time-backwards",
                    ("from", points[firstLate - 1].Hours * 60), ("to", points[firstLate].Hours * 60), ("count", late.Count)),
                [Message.Of("logs.times-that-rise"), Message.Of("logs.few-out-of-order")],
                Message.Of("logs.clock-set-back")));
        }

        MemoryExtensions.Sort(points, (a, b) => a.Hours.CompareTo(b.Hours));
        Rebase(points);
        var start = points[0].Hours;
        warnings.Add(HeatWarning.At(
            WarningCodes.SamplesOutOfOrder, Message.Of("logs.out-of-order", ("count", late.Count)), [.. late.Select(h => h - start)]));
    }

    private static void Rebase(Span<HeatPoint> points)
    {
        var start = points[0].Hours;
        for (var i = 0; i < points.Length; i++) points[i] = points[i] with { Hours = points[i].Hours - start };
    }

    /// <summary>One sample a moment: the mean of those that share it.</summary>
    private static int MergeDuplicates(Span<HeatPoint> points, List<HeatWarning> warnings)
    {
        var (kept, group, differing) = (0, 1, 0);
        var duplicates = new List<double>();
        for (var i = 1; i < points.Length; i++)
        {
            if (points[i].Hours > points[kept].Hours)
            {
                points[++kept] = points[i];
                group = 1;
                continue;
            }

            duplicates.Add(points[i].Hours);
            if (points[i].Kelvin != points[kept].Kelvin) differing++;
            group++;
            points[kept] = points[kept] with { Kelvin = points[kept].Kelvin + ((points[i].Kelvin - points[kept].Kelvin) / group) };
        }

        if (duplicates.Count > 0)
        {
            warnings.Add(HeatWarning.At(
                WarningCodes.DuplicateTimes,
                Message.Of("logs.duplicate-times", ("count", duplicates.Count), ("differing", differing)), duplicates));
        }

        return kept + 1;
    }

    private static string Minutes(double hours) => (hours * 60).ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);
}
