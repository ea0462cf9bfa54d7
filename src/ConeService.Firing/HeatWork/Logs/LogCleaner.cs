using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>Puts the samples of a log in order and takes out what cannot be; says what it did.</summary>
internal static class LogCleaner
{
    private const double MostLateShare = 0.01;
    private const int AlwaysTolerated = 3;

    // Fewer samples can't show what an open thermocouple is.
    private const int LeastToJudge = 7;

    private enum SampleOrder
    {
        Kept,
        Sorted,
        Reversed,
    }

    /// <summary>Cleans the samples in place.</summary>
    /// <param name="log">The samples, for findings.</param>
    /// <param name="samples">The samples as they came; the history keeps this memory.</param>
    /// <param name="missing">For each row without a temperature, the sample that came after it.</param>
    /// <exception cref="RefusedException">The log can't be put right.</exception>
    public static CleanLog Clean(LogSamples log, Memory<HeatPoint> samples, IReadOnlyList<int> missing)
    {
        var points = samples.Span;
        var warnings = new List<HeatWarning>();
        LogRestart.Join(points, log.FieldOf, warnings);
        var order = Order(points, log.FieldOf, warnings);
        var cuts = new List<CutStretch>();
        if (order != SampleOrder.Reversed) Miss(points, missing, cuts);
        var (count, reversed) = (points.Length, order == SampleOrder.Reversed);
        int Sent(int index) => reversed ? count - 1 - index : index;
        CheckRange(points, Sent, log);
        var silences = BlindStretches.Silences(points, Sent);
        var stay = ExcursionFilter.Remove(points, Sent, log.FieldOf, cuts, warnings);
        var merged = MergeDuplicates(points[..stay], warnings);
        if (merged < 2)
        {
            throw new RefusedException(new Finding(
                FindingCodes.LogTooShort, log.FieldOf(0), null, Message.Of("logs.one-moment"), [Message.Of("logs.two-times")],
                Message.Of("logs.wrong-time-column")));
        }

        var last = points[merged - 1].Hours;
        if (last > LogSamples.LongestHours)
        {
            throw new RefusedException(new Finding(
                FindingCodes.LogTimeUnreadable, log.FieldOf(points.Length - 1), null, Message.Of("logs.too-long", ("hours", last)),
                [LogSamples.HoursAllowed], Message.Of("logs.wrong-time-unit")));
        }

        var kept = SpikeFilter.Remove(points[..merged], warnings);
        var history = new HeatHistory(samples[..kept]);
        var usual = SamplingCheck.Warn(history, cuts, warnings);
        BlindStretches.Check(history, cuts, silences, usual, log);
        FiringCheck.Warn(history, warnings);
        return new(history, warnings, log.Count, kept);
    }

    private static void Miss(ReadOnlySpan<HeatPoint> points, IReadOnlyList<int> missing, List<CutStretch> cuts)
    {
        foreach (var after in missing)
        {
            if (after <= 0 || after >= points.Length) continue;
            var cut = new CutStretch(points[after - 1], points[after], after);
            if (cuts.Count == 0 || cuts[^1] != cut) cuts.Add(cut);
        }
    }

    // Readings that no kiln has may stand alone or, as long as the thermocouple was out, at an end of its range.
    private static void CheckRange(ReadOnlySpan<HeatPoint> points, Func<int, int> sent, LogSamples log)
    {
        var (hottest, coldest, beyond) = (-1, -1, 0);
        for (var i = 0; i < points.Length; i++)
        {
            if (IsInRange(points[i].Kelvin)) continue;
            beyond++;
            if (points[i].Kelvin < Temperature.KelvinAtZero) coldest = coldest < 0 ? i : coldest;
            else if (hottest < 0 || points[i].Kelvin > points[hottest].Kelvin) hottest = i;
            var (before, after) = (points[Math.Max(0, i - 1)], points[Math.Min(points.Length - 1, i + 1)]);
            // A climb goes beyond the range step by step, an open thermocouple at once.
            if (Crosses(before, points[i]) || Crosses(after, points[i])) beyond = points.Length;
        }

        if (beyond == 0 || (points.Length >= LeastToJudge && beyond <= points.Length / 2)) return;
        throw new RefusedException(hottest >= 0
            ? log.TooHot(sent(hottest), points[hottest].Kelvin)
            : log.TooCold(sent(coldest), points[coldest].Kelvin));
    }

    private static bool IsInRange(double kelvin) =>
        kelvin is >= LogSamples.ColdestCelsius + Temperature.KelvinAtZero and <= LogSamples.HottestCelsius + Temperature.KelvinAtZero;

    private static bool Crosses(HeatPoint inside, HeatPoint outside) =>
        IsInRange(inside.Kelvin)
        && !(inside.Hours <= outside.Hours ? ExcursionFilter.IsStep(inside, outside) : ExcursionFilter.IsStep(outside, inside));

    /// <summary>Sorts a few late samples and turns a log round that runs newest first; a clock that was set back is refused.</summary>
    private static SampleOrder Order(Span<HeatPoint> points, Func<int, string> fieldOf, List<HeatWarning> warnings)
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

        if (late.Count == 0) return SampleOrder.Kept;
        if (descents > 1 && late.Count == points.Length - 1 && descents >= 0.9 * late.Count)
        {
            points.Reverse();
            Rebase(points);
            warnings.Add(HeatWarning.Of(WarningCodes.LogNewestFirst, Message.Of("logs.newest-first")));
            return SampleOrder.Reversed;
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
        return SampleOrder.Sorted;
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
