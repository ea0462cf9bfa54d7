using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>
/// Asks back what a log does not tell near its top, where half an hour is a cone: stretches whose readings were cut out or are empty, and
/// stretches without rows. 20 minutes and 150 °C are judgement: at 60 °C/h twenty minutes are two thirds of the bend of a cone, and
/// 150 °C below its top a firing does no cone of that top anything.
/// </summary>
internal static class BlindStretches
{
    private const double LongestHours = 20.0 / 60;
    private const double NearTopKelvin = 150;

    // Fewer samples have no usual step: they are the corners of a firing, written by hand.
    private const int LeastToJudge = 7;

    /// <summary>The stretches without rows that are longer than can be bridged near the top, whatever the log's usual step.</summary>
    /// <param name="points">The samples in time order, before any is taken out.</param>
    /// <param name="sent">Place of a sample among those sent.</param>
    public static List<Silence> Silences(ReadOnlySpan<HeatPoint> points, Func<int, int> sent)
    {
        var found = new List<Silence>();
        for (var i = 1; i < points.Length; i++)
        {
            if (points[i].Hours - points[i - 1].Hours > LongestHours) found.Add(new(points[i].Hours, sent(i - 1), sent(i)));
        }

        return found;
    }

    /// <summary>Asks back where a stretch near the top is too long to be bridged by a straight line.</summary>
    /// <param name="history">The log as it is followed.</param>
    /// <param name="cuts">The stretches whose readings are unusable.</param>
    /// <param name="silences">The stretches without rows.</param>
    /// <param name="usual">The usual step of the log, h.</param>
    /// <param name="log">Names samples.</param>
    /// <exception cref="RefusedException">A stretch decides which cone went down.</exception>
    public static void Check(
        HeatHistory history, IReadOnlyCollection<CutStretch> cuts, IReadOnlyList<Silence> silences, double usual, LogSamples log)
    {
        foreach (var cut in cuts)
        {
            if (!Decides(history, cut.Before, cut.After, usual, out var hours)) continue;
            throw new RefusedException(new Finding(
                FindingCodes.LogBlindNearTop, log.FieldOf(cut.Index), null,
                Message.Of(
                    "logs.blind-near-top", ("from", cut.Before.Hours * 60), ("to", cut.After.Hours * 60), ("minutes", hours * 60)),
                [Message.Of("logs.blind-allowed")], Message.Of("logs.other-thermocouple")));
        }

        if (silences.Count > 0 && history.Points.Length >= LeastToJudge) CheckSilences(history, silences, usual, log);
    }

    private static void CheckSilences(HeatHistory history, IReadOnlyList<Silence> silences, double usual, LogSamples log)
    {
        var points = history.Points;
        var next = 0;
        for (var i = 1; i < points.Length; i++)
        {
            var (before, after) = (points[i - 1], points[i]);
            while (next < silences.Count && silences[next].EndHours <= before.Hours) next++;
            if (next == silences.Count) return;
            // A log that is sparse throughout is read, and its steps are warned of.
            if (silences[next].EndHours > after.Hours || after.Hours - before.Hours <= SamplingCheck.GapHours(usual)) continue;
            if (!Decides(history, before, after, usual, out var hours)) continue;
            throw new RefusedException(new Finding(
                FindingCodes.LogGapNearTop, log.FieldOf(silences[next].After), null,
                Message.Of(
                    "logs.gap-near-top",
                    ("before", log.FieldOf(silences[next].Before)), ("from", before.Hours * 60),
                    ("after", log.FieldOf(silences[next].After)), ("to", after.Hours * 60), ("minutes", hours * 60)),
                [Message.Of("logs.gap-allowed")], Message.Of("logs.gap-rows")));
        }
    }

    private static bool Decides(HeatHistory history, HeatPoint before, HeatPoint after, double usual, out double hours)
    {
        var step = after.Hours - before.Hours;
        hours = step - Math.Min(usual, step / 2);
        return hours > LongestHours + 1e-9 && Math.Max(before.Kelvin, after.Kelvin) > history.Peak.Kelvin - NearTopKelvin;
    }
}

/// <summary>A stretch of a log without rows.</summary>
/// <param name="EndHours">When it ends, h.</param>
/// <param name="Before">Place of the sample before it among those sent.</param>
/// <param name="After">Place of the sample after it.</param>
internal readonly record struct Silence(double EndHours, int Before, int After);
