using System.Globalization;
using System.Text.RegularExpressions;

namespace ConeService.Data;

/// <summary>What the text of a cone number says by itself.</summary>
/// <param name="Position">Signed number for sorting: 022 is −22, 05.5 is −5.5, 6 is 6; a letter does not move it.</param>
/// <param name="Kind">whole, half or seger-letter.</param>
/// <param name="WholeStep">Index among the whole cones 022 … 14, null outside.</param>
internal sealed partial record ConeNumber(decimal Position, string Kind, int? WholeStep)
{
    /// <summary>022 to 01 are 22 cones, 1 to 14 are 14 more.</summary>
    public const int WholeCones = 36;

    private const int BelowOne = 22;

    /// <summary>Null for a text that is no cone: 0, 00, 006, 6.0.</summary>
    public static ConeNumber? Parse(string id)
    {
        if (Form().Match(id) is not { Success: true } match)
            return null;
        var number = decimal.Parse(match.Groups["number"].Value, CultureInfo.InvariantCulture);
        var suffix = match.Groups["suffix"].Value;
        var magnitude = suffix == ".5" ? number + 0.5m : number;
        var position = match.Groups["zero"].Length > 0 ? -magnitude : magnitude;
        return suffix switch
        {
            ".5" => new ConeNumber(position, "half", null),
            "a" => new ConeNumber(position, "seger-letter", null),
            _ => new ConeNumber(position, "whole", Step((int)position)),
        };
    }

    private static int? Step(int position)
    {
        // There is no cone 0, so the count closes up between 01 and 1.
        var step = position < 0 ? position + BelowOne : position + BelowOne - 1;
        return step is >= 0 and < WholeCones ? step : null;
    }

    [GeneratedRegex(@"^(?<zero>0?)(?<number>[1-9][0-9]?)(?<suffix>\.5|a)?\z")]
    private static partial Regex Form();
}
