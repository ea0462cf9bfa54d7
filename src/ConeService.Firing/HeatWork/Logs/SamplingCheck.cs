using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>Finds where a log is too sparse to be trusted: gaps, and steps that cut the corners of the true curve near the top.</summary>
internal static class SamplingCheck
{
    // HEAT-WORK section 2: warn when sample spacing × rate exceeds 10 K near the top.
    private const double CoarseKelvin = 10;
    private const double NearTopKelvin = 100;

    private const double LeastGapHours = 10.0 / 60;
    private const double GapFactor = 5;

    /// <summary>What a step must exceed to be a gap in a log of a usual step, h.</summary>
    public static double GapHours(double usual) => Math.Max(LeastGapHours, GapFactor * usual);

    /// <summary>Tells of gaps and coarse steps.</summary>
    /// <returns>The usual step, h.</returns>
    public static double Warn(HeatHistory history, IReadOnlyCollection<CutStretch> cuts, List<HeatWarning> warnings)
    {
        var points = history.Points;
        var spacing = new double[Math.Min(points.Length - 1, 10_001)];
        // A sample of the spacings is enough for their median.
        var stride = (double)(points.Length - 1) / spacing.Length;
        for (var i = 0; i < spacing.Length; i++)
        {
            var at = (int)(i * stride);
            spacing[i] = points[at + 1].Hours - points[at].Hours;
        }

        Array.Sort(spacing);
        var gap = GapHours(spacing[spacing.Length / 2]);
        var (gaps, coarse, longest) = (new List<double>(), new List<double>(), 0.0);
        var told = cuts.Select(c => c.Before.Hours).ToHashSet();
        for (var i = 1; i < points.Length; i++)
        {
            // What was cut out or missing is told already.
            if (told.Count > 0 && told.Contains(points[i - 1].Hours)) continue;
            var hours = points[i].Hours - points[i - 1].Hours;
            if (hours > gap)
            {
                gaps.Add(points[i - 1].Hours);
                longest = Math.Max(longest, hours);
            }

            var top = Math.Max(points[i].Kelvin, points[i - 1].Kelvin) > history.Peak.Kelvin - NearTopKelvin;
            if (top && Math.Abs(points[i].Kelvin - points[i - 1].Kelvin) > CoarseKelvin) coarse.Add(points[i - 1].Hours);
        }

        if (gaps.Count > 0)
        {
            warnings.Add(HeatWarning.At(
                WarningCodes.Gaps, Message.Of("logs.gaps", ("count", gaps.Count), ("minutes", longest * 60)), gaps));
        }

        if (coarse.Count > 0)
        {
            warnings.Add(HeatWarning.At(WarningCodes.CoarseSampling, Message.Of("logs.coarse", ("count", coarse.Count)), coarse));
        }

        return spacing[spacing.Length / 2];
    }
}
