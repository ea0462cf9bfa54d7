using System.Text;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>
/// Decides by whole columns whether a number such as 1,213 is one and a bit or a thousand: by the marks of the other numbers of the
/// file, and by its neighbours without a mark, from which no kiln falls a thousand degrees. What neither settles is asked back.
/// For one log only.
/// </summary>
/// <param name="separator">What stands between the cells of the log.</param>
internal sealed class LogMarks(char separator)
{
    // A column that has more of them is decided by the first ones.
    private readonly Dictionary<(int Column, bool Comma), Doubtful> doubtful = [];
    private bool decimalComma;

    /// <summary>True when the points of the file are decimal, so that plain numbers need not be looked at.</summary>
    public bool PointIsDecimal { get; private set; }

    private sealed record Doubtful(int Line, string Text, List<int> Samples);

    /// <summary>Takes note of a number.</summary>
    /// <param name="column">Its column.</param>
    /// <param name="number">The number.</param>
    /// <param name="most">The largest value that the column can have; a thousand beyond it is none.</param>
    /// <param name="sample">The sample it becomes.</param>
    /// <param name="line">Its line.</param>
    /// <param name="cell">The cell, UTF-8.</param>
    public void Note(int column, LogNumber number, double most, int sample, int line, ReadOnlySpan<byte> cell)
    {
        var comma = number.Mark is NumberMark.DecimalComma or NumberMark.EitherComma;
        var either = number.Mark is NumberMark.EitherComma or NumberMark.EitherPoint;
        if (either && number.Value * LogNumber.Thousand > most) either = false;
        if (!either)
        {
            decimalComma |= comma;
            PointIsDecimal |= !comma;
            return;
        }

        if (!doubtful.TryGetValue((column, comma), out var seen))
        {
            doubtful[(column, comma)] = seen = new(line, Encoding.UTF8.GetString(cell), []);
        }

        seen.Samples.Add(sample);
    }

    /// <summary>Settles the numbers of a column in place.</summary>
    /// <param name="column">The column.</param>
    /// <param name="values">The samples as they stand; those in doubt hold the reading with decimals.</param>
    /// <param name="count">How many samples there are.</param>
    /// <param name="isStep">True when one value can follow the other, given the second sample's place.</param>
    /// <param name="scale">Changes a sample to the reading with thousands.</param>
    /// <param name="warnings">What was decided is told here.</param>
    /// <exception cref="RefusedException">It can't be settled; carries the first number with both readings.</exception>
    public void Settle(
        int column, Func<int, double> values, int count, Func<double, double, int, bool> isStep, Action<int> scale,
        List<HeatWarning> warnings)
    {
        foreach (var comma in new[] { true, false })
        {
            if (!doubtful.TryGetValue((column, comma), out var seen)) continue;
            if (!Thousands(comma, seen, values, count, isStep)) continue;
            foreach (var sample in seen.Samples) scale(sample);
            var number = seen.Text.Trim();
            warnings.Add(new(
                WarningCodes.ThousandsRead,
                Message.Of(
                    "logs.thousands-read", ("count", seen.Samples.Count), ("text", number),
                    ("number", number.Replace(comma ? "," : ".", "", StringComparison.Ordinal))),
                seen.Samples.Count, []));
        }
    }

    private bool Thousands(
        bool comma, Doubtful seen, Func<int, double> values, int count, Func<double, double, int, bool> isStep)
    {
        var (sameIsDecimal, otherIsDecimal) = comma ? (decimalComma, PointIsDecimal) : (PointIsDecimal, decimalComma);
        if (sameIsDecimal && !otherIsDecimal) return false;
        var (edges, asDecimals, asThousands) = (0, 0, 0);
        var marked = seen.Samples.ToHashSet();
        foreach (var at in seen.Samples)
        {
            foreach (var beside in new[] { at - 1, at + 1 })
            {
                if (beside < 0 || beside >= count || marked.Contains(beside)) continue;
                edges++;
                var (first, second) = (Math.Min(at, beside), Math.Max(at, beside));
                bool Fits(double factor) => isStep(
                    values(first) * (first == at ? factor : 1), values(second) * (second == at ? factor : 1), second);
                if (Fits(1)) asDecimals++;
                if (Fits(LogNumber.Thousand)) asThousands++;
            }
        }

        var thousandsFit = asThousands == edges;
        if (otherIsDecimal && !sameIsDecimal && thousandsFit) return true;
        if (edges > 0 && thousandsFit && asDecimals < edges) return true;
        // A point between commas is decimal unless the column tells otherwise; so it has always been read.
        if (!comma && separator == ',' && !sameIsDecimal && !otherIsDecimal && asDecimals == edges) return false;
        throw new RefusedException(AmbiguousNumber.Finding(CsvLogReader.FieldOf(seen.Line), seen.Text, comma ? ',' : '.')!);
    }
}
