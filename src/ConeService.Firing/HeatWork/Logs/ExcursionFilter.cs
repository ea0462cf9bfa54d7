using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>
/// Cuts out the stretches of a log in which its thermocouple was open or shorted: several readings that no kiln can have come to and gone
/// from, by the rate of the step, or because they stand at an end of the instrument's range. A step without a way back is
/// refused upwards and told downwards. Steps: a kiln changes by less than 60 °C a minute (common practice; even a small gas
/// kiln climbs by less than 20).
/// </summary>
internal static class ExcursionFilter
{
    /// <summary>Fastest change that is followed, K/h.</summary>
    public const double FastestKelvinPerHour = 3600;

    // Below it a step is noise, which the filter of spikes deals with.
    private const double LeastStep = 30;
    private const double StepToAnEnd = 100;
    private const double NearTop = 150;

    // How far a kiln may have gone while its thermocouple was out.
    private const double ReturnKelvin = 60;
    private const double ReturnKelvinPerHour = 900;
    private const int MostSteps = 400;
    private const int MostListed = 5;

    private readonly record struct Block(int Start, int End, bool AtAnEnd);

    /// <summary>Cuts them out in place.</summary>
    /// <param name="points">The samples in time order.</param>
    /// <param name="sent">Place of a sample among those sent.</param>
    /// <param name="fieldOf">Names a sample by that place.</param>
    /// <param name="cuts">The stretches that were cut are added here.</param>
    /// <param name="warnings">What was done is told here.</param>
    /// <returns>How many samples stay.</returns>
    /// <exception cref="RefusedException">The log climbs by a step that no kiln makes, or ends near its top.</exception>
    public static int Remove(
        Span<HeatPoint> points, Func<int, int> sent, Func<int, string> fieldOf, List<CutStretch> cuts, List<HeatWarning> warnings)
    {
        var blocks = Blocks(points);
        var atAnEnd = blocks.Where(b => b.AtAnEnd).Sum(b => b.End - b.Start);
        if (points.Length > 7 && atAnEnd > points.Length / 2)
        {
            throw new RefusedException(new Finding(
                FindingCodes.LogThermocoupleLost, fieldOf(sent(0)), null,
                Message.Of("logs.thermocouple-out", ("count", atAnEnd), ("samples", points.Length)),
                [Message.Of("logs.readings-over-the-top")], Message.Of("logs.broken-thermocouple")));
        }

        if (blocks.Count < 2) return points.Length;
        if (blocks.Count > MostSteps) throw Impossible(points, blocks[1].Start, blocks.Count - 1, sent, fieldOf);
        var good = Good(points, blocks);
        var (first, last) = (good.IndexOf(true), good.LastIndexOf(true));
        for (var k = 1; k < blocks.Count; k++)
        {
            // A step between good blocks has no way back.
            if (good[k] && good[k - 1]) CheckStep(points, blocks[k].Start, sent, fieldOf, warnings);
        }

        CheckLost(points, blocks, last, sent, fieldOf, warnings);
        // Whether the last reading alone is wrong, the filter of spikes judges.
        if (IsLone(blocks, blocks.Count - 1) && !blocks[^1].AtAnEnd) good[^1] = true;
        var told = new List<Message>();
        var (times, count, stretches) = (new List<double>(), 0, 0);
        for (var k = 0; k < last; k++)
        {
            if (good[k]) continue;
            var run = k;
            while (!good[run + 1]) run++;
            var (start, end) = (blocks[k].Start, blocks[run].End);
            k = run;
            // A single reading is left to the filter of spikes.
            if (end - start == 1 && first < k && points.Length > 7)
            {
                good[k] = true;
                continue;
            }

            count += end - start;
            stretches++;
            for (var i = start; i < end; i++) times.Add(points[i].Hours);
            if (told.Count < MostListed) told.Add(Where(points[start..end]));
            if (start > 0) cuts.Add(new(points[start - 1], points[end], sent(start)));
        }

        if (count > 0)
        {
            warnings.Add(HeatWarning.At(
                WarningCodes.ExcursionsCut,
                Message.Of("logs.excursions", ("count", count), ("where", told.ToArray()), ("more", stretches > told.Count ? "yes" : "no")),
                times));
        }

        var kept = 0;
        for (var k = 0; k < blocks.Count; k++)
        {
            if (!good[k]) continue;
            points[blocks[k].Start..blocks[k].End].CopyTo(points[kept..]);
            kept += blocks[k].End - blocks[k].Start;
        }

        return kept;
    }

    /// <summary>True for a reading at an end of what instruments show: 0, 1370 to 1372, 1760 to 1768 °C, or beyond any kiln.</summary>
    public static bool IsAtAnEnd(double kelvin)
    {
        var celsius = kelvin - Temperature.KelvinAtZero;
        return celsius is <= LogSamples.ColdestCelsius or (>= -0.5 and <= 0.5) or (>= 1369.5 and <= 1373) or > LogSamples.HottestCelsius;
    }

    /// <summary>True when no kiln goes from one sample to the next.</summary>
    public static bool IsStep(HeatPoint from, HeatPoint to)
    {
        var kelvin = Math.Abs(to.Kelvin - from.Kelvin);
        return kelvin > LeastStep
            && (kelvin > FastestKelvinPerHour * 1.0001 * (to.Hours - from.Hours)
                || (kelvin > StepToAnEnd && (IsAtAnEnd(from.Kelvin) || IsAtAnEnd(to.Kelvin))));
    }

    private static List<Block> Blocks(ReadOnlySpan<HeatPoint> points)
    {
        var blocks = new List<Block>();
        var (start, atAnEnd) = (0, points.Length > 0 && IsAtAnEnd(points[0].Kelvin));
        for (var i = 1; i <= points.Length; i++)
        {
            if (i == points.Length || IsStep(points[i - 1], points[i]))
            {
                blocks.Add(new(start, i, atAnEnd));
                if (i == points.Length) break;
                (start, atAnEnd) = (i, IsAtAnEnd(points[i].Kelvin));
            }
            else if (atAnEnd)
            {
                atAnEnd = IsAtAnEnd(points[i].Kelvin);
            }
        }

        return blocks;
    }

    // From the longest block outwards: the next one that a kiln could have come to is good, and what lies between is not.
    private static List<bool> Good(ReadOnlySpan<HeatPoint> points, List<Block> blocks)
    {
        var main = 0;
        for (var k = 1; k < blocks.Count; k++)
        {
            var (a, b) = (blocks[k], blocks[main]);
            if ((b.AtAnEnd && !a.AtAnEnd) || (a.AtAnEnd == b.AtAnEnd && a.End - a.Start > b.End - b.Start)) main = k;
        }

        var good = blocks.Select((_, k) => k == main).ToList();
        var from = main;
        for (var k = main + 1; k < blocks.Count; k++)
        {
            if (blocks[k].AtAnEnd || !Returns(points[blocks[from].End - 1], points[blocks[k].Start], k > from + 1)) continue;
            good[k] = true;
            from = k;
        }

        // What never returns, and is no end of the range, is a step of the log itself.
        var endsAfter = blocks.Skip(from + 1).Any(b => b.AtAnEnd);
        for (var k = from + 1; k < blocks.Count; k++) good[k] = !endsAfter && !IsLone(blocks, k);
        from = main;
        for (var k = main - 1; k >= 0; k--)
        {
            if (blocks[k].AtAnEnd || !Returns(points[blocks[k].End - 1], points[blocks[from].Start], k < from - 1)) continue;
            good[k] = true;
            from = k;
        }

        var endsBefore = blocks.Take(from).Any(b => b.AtAnEnd);
        for (var k = from - 1; k >= 0; k--) good[k] = !endsBefore;
        return good;
    }

    // The last reading alone, away from all others.
    private static bool IsLone(List<Block> blocks, int k) =>
        k == blocks.Count - 1 && blocks[k].End - blocks[k].Start == 1 && blocks[k].End > 7;

    private static bool Returns(HeatPoint before, HeatPoint after, bool something) =>
        something && Math.Abs(after.Kelvin - before.Kelvin) <= ReturnKelvin + (ReturnKelvinPerHour * (after.Hours - before.Hours));

    private static void CheckStep(
        ReadOnlySpan<HeatPoint> points, int at, Func<int, int> sent, Func<int, string> fieldOf, List<HeatWarning> warnings)
    {
        if (points[at].Kelvin > points[at - 1].Kelvin) throw Impossible(points, at, 1, sent, fieldOf);
        warnings.Add(HeatWarning.At(
            WarningCodes.ImpossibleStep,
            Message.Of("logs.step-down", ("from", Celsius(points[at - 1])), ("to", Celsius(points[at])), ("minute", points[at].Hours * 60)),
            [points[at].Hours]));
    }

    private static void CheckLost(
        ReadOnlySpan<HeatPoint> points, List<Block> blocks, int last, Func<int, int> sent, Func<int, string> fieldOf,
        List<HeatWarning> warnings)
    {
        var end = blocks[last].End;
        if (end == points.Length || points.Length - end == 1 && !blocks[^1].AtAnEnd) return;
        var before = points[end - 1];
        var message = Message.Of(
            "logs.thermocouple-lost", ("celsius", Celsius(points[end])), ("minute", points[end].Hours * 60), ("last", Celsius(before)));
        if (before.Kelvin > Peak(points[..end]) - NearTop)
        {
            throw new RefusedException(new Finding(
                FindingCodes.LogThermocoupleLost, fieldOf(sent(end)), null, message, [Message.Of("logs.readings-over-the-top")],
                Message.Of("logs.broken-thermocouple")));
        }

        warnings.Add(HeatWarning.At(WarningCodes.ThermocoupleLost, message, [points[end].Hours]));
    }

    private static double Peak(ReadOnlySpan<HeatPoint> points)
    {
        var peak = 0.0;
        foreach (var point in points)
        {
            if (!IsAtAnEnd(point.Kelvin)) peak = Math.Max(peak, point.Kelvin);
        }

        return peak;
    }

    private static RefusedException Impossible(
        ReadOnlySpan<HeatPoint> points, int at, int count, Func<int, int> sent, Func<int, string> fieldOf) =>
        new(new Finding(
            FindingCodes.LogStepImpossible, fieldOf(sent(at)), null,
            Message.Of(
                "logs.step-impossible", ("from", Celsius(points[at - 1])), ("to", Celsius(points[at])),
                ("minutes", (points[at].Hours - points[at - 1].Hours) * 60), ("count", count)),
            [Message.Of("logs.steps-allowed")], Message.Of("logs.step-mistake")));

    private static Message Where(ReadOnlySpan<HeatPoint> cut)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var point in cut) (low, high) = (Math.Min(low, Celsius(point)), Math.Max(high, Celsius(point)));
        return Message.Of(
            "logs.excursion", ("low", low), ("high", high), ("span", high - low < 0.05 ? "no" : "yes"),
            ("from", cut[0].Hours * 60), ("to", cut[^1].Hours * 60));
    }

    private static double Celsius(HeatPoint point) => point.Kelvin - Temperature.KelvinAtZero;
}
