using System.Text;
using ConeService.Contract.Answers;
using ConeService.Contract.Quantities;

namespace ConeService.Firing.Uploads;

/// <summary>
/// How a file whose cells commas do not separate writes its decimals, told by all of its numbers. A comma is decimal there; but
/// 1,213 alone could be a thousand, and where decimals have commas, 1.213 could. Whatever no other number of the file settles is
/// refused. For one file only.
/// </summary>
public sealed class DecimalMark
{
    // Sign, three digits, the mark and three more.
    private const int LongestAmbiguous = 8;

    private (long Line, string Number)? comma;
    private (long Line, string Number)? point;
    private bool proven;

    /// <summary>Takes note of a number.</summary>
    /// <param name="number">The number, UTF-8, without blanks and unit.</param>
    /// <param name="line">Its line.</param>
    public void Note(ReadOnlySpan<byte> number, long line)
    {
        var isShort = number.Length is >= 5 and <= LongestAmbiguous;
        if (number.Contains((byte)','))
        {
            if (proven) return;
            if (isShort && number[^4] == (byte)',' && IsAmbiguous(number, ',', out var text)) comma ??= (line, text);
            else proven = true;
        }
        else if (point is null && isShort && number[^4] == (byte)'.' && IsAmbiguous(number, '.', out var text)) point = (line, text);
    }

    /// <summary>The first number of the file that could be read in two ways; null when there is none.</summary>
    /// <param name="fieldOf">Names the place of a line.</param>
    public Finding? Ambiguous(Func<long, string> fieldOf) => (proven, comma, point) switch
    {
        (true, _, { } found) => AmbiguousNumber.Finding(fieldOf(found.Line), found.Number, '.'),
        (false, { } found, _) => AmbiguousNumber.Finding(fieldOf(found.Line), found.Number),
        _ => null,
    };

    private static bool IsAmbiguous(ReadOnlySpan<byte> number, char mark, out string text)
    {
        text = Encoding.UTF8.GetString(number);
        return AmbiguousNumber.Is(text, mark, out _);
    }
}
