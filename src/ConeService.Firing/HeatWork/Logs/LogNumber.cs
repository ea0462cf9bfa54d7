using System.Globalization;
using System.Text;
using ConeService.Contract.Quantities;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>What the mark in a number says of the marks of its file.</summary>
internal enum NumberMark
{
    /// <summary>Nothing: it has none.</summary>
    None,

    /// <summary>Its comma can only be decimal.</summary>
    DecimalComma,

    /// <summary>Its point can only be decimal.</summary>
    DecimalPoint,

    /// <summary>Its comma may stand for decimals or for thousands.</summary>
    EitherComma,

    /// <summary>Its point may stand for decimals or for thousands.</summary>
    EitherPoint,
}

/// <summary>A number of a log as people and spreadsheets write it: 1213.5, 1213,5, 1,213.5, 1 213,5, 1213 °C.</summary>
/// <param name="Value">The number; one that may be a thousand is read as decimals, a thousandth of the other reading.</param>
/// <param name="Mark">What its mark says of the file.</param>
/// <param name="Unit">C or F behind the number; a blank without one.</param>
internal readonly record struct LogNumber(double Value, NumberMark Mark, char Unit)
{
    /// <summary>How many times larger the reading with thousands is.</summary>
    public const double Thousand = 1000;

    private const int Longest = 48;
    private const int Group = 3;

    /// <summary>Reads a cell.</summary>
    /// <param name="cell">The cell, UTF-8.</param>
    /// <param name="number">The number.</param>
    public static bool TryParse(ReadOnlySpan<byte> cell, out LogNumber number)
    {
        number = default;
        if (cell.IsEmpty || cell.Length > Longest) return false;
        Span<char> characters = stackalloc char[Longest];
        var text = ((ReadOnlySpan<char>)characters[..Encoding.UTF8.GetChars(cell, characters)]).Trim();
        var unit = TakeUnit(ref text);
        Span<char> digits = stackalloc char[Longest];
        if (!TryStrip(text, digits, out var length, out var mark)) return false;
        if (!double.TryParse(digits[..length], NumberStyles.Float, CultureInfo.InvariantCulture, out var value)) return false;
        number = new(value, mark, unit);
        return double.IsFinite(value);
    }

    private static char TakeUnit(ref ReadOnlySpan<char> text)
    {
        if (text.IsEmpty) return ' ';
        var unit = text[^1] switch { 'C' or 'c' or '℃' => 'C', 'F' or 'f' or '℉' => 'F', _ => ' ' };
        if (unit == ' ') return unit;
        text = text[..^1].TrimEnd();
        if (text.EndsWith("deg", StringComparison.OrdinalIgnoreCase)) text = text[..^3];
        // A ° of another encoding is U+FFFD here.
        text = text.TrimEnd("°º\uFFFD. ");
        return unit;
    }

    // Writes the number with a point for its decimals and without signs of thousands.
    private static bool TryStrip(ReadOnlySpan<char> text, Span<char> digits, out int length, out NumberMark mark)
    {
        (length, mark) = (0, NumberMark.None);
        var (commas, points) = (text.Count(','), text.Count('.'));
        // Of two kinds of mark the last is the decimal one; of one kind that stands more than once, none is.
        var isDecimal = commas > 0 && points > 0 ? text[text.LastIndexOfAny(',', '.')] : commas == 1 ? ',' : points == 1 ? '.' : '\0';
        if (isDecimal != '\0' && text.Count(isDecimal) > 1) return false;
        for (var i = 0; i < text.Length; i++)
        {
            var at = text[i];
            if (at == '\u2212') at = '-';
            if (at == isDecimal) digits[length++] = '.';
            else if (at is ',' or '.' or ' ' or '\u00A0' or '\u202F' or '\'' or '\u2019')
            {
                if (!IsGroup(text, i)) return false;
            }
            else if (at is (>= '0' and <= '9') or '-' or '+' or 'e' or 'E') digits[length++] = at;
            else return false;
        }

        if (isDecimal == '\0') return true;
        var either = commas + points == 1 && AmbiguousNumber.Is(text, isDecimal, out _);
        mark = (isDecimal, either) switch
        {
            (',', true) => NumberMark.EitherComma,
            (',', false) => NumberMark.DecimalComma,
            (_, true) => NumberMark.EitherPoint,
            _ => NumberMark.DecimalPoint,
        };
        return true;
    }

    // A sign of thousands has a digit before it and exactly three behind.
    private static bool IsGroup(ReadOnlySpan<char> text, int at)
    {
        if (at == 0 || !char.IsAsciiDigit(text[at - 1]) || at + Group >= text.Length) return false;
        for (var i = 1; i <= Group; i++)
        {
            if (!char.IsAsciiDigit(text[at + i])) return false;
        }

        return at + Group + 1 == text.Length || !char.IsAsciiDigit(text[at + Group + 1]);
    }
}
