using System.Globalization;
using System.Text.RegularExpressions;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Conversions;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Cones.Conversions;

/// <summary>
/// Finds a column of cones from which a program seems to have taken the leading zeros: none of its cones has one, and some are
/// bare numbers that are other cones with a zero before them.
/// </summary>
internal static partial class LostZeros
{
    private const int MostLines = 20;

    /// <summary>The warning; null when there is nothing to warn of.</summary>
    /// <param name="scale">The scale.</param>
    /// <param name="cones">The cells of the column.</param>
    /// <param name="lines">The line of the file of each.</param>
    public static ConversionWarning? Find(ConeScale scale, IEnumerable<SentText> cones, IReadOnlyList<long> lines)
    {
        var suspect = new List<(long Line, string Cone)>();
        foreach (var (index, sent) in cones.Index())
        {
            if (!ConeSpelling.TryRead(sent.Text, out var cone, out _)) continue;
            // One zero left shows that nothing took them away.
            if (cone.IsZeroCone) return null;
            if (BareNumber().IsMatch(sent.Text!.Trim()) && scale.Contains(cone.MixUp)) suspect.Add((lines[index], cone.ToString()));
        }

        if (suspect.Count == 0) return null;
        var named = suspect.Take(MostLines).Select(s => s.Line.ToString(CultureInfo.InvariantCulture)).ToArray();
        return new(
            WarningCodes.ZerosLost,
            Message.Of(
                "conversions.zeros-lost", ("lines", named), ("count", suspect.Count), ("more", suspect.Count > MostLines ? "yes" : "no"),
                ("cone", suspect[0].Cone)),
            [.. suspect.Select(s => s.Line)]);
    }

    // What a spreadsheet holds as a number; “cone 6” and “^6” were written by someone who meant them.
    [GeneratedRegex(@"^[0-9]+(\.[0-9]+)?$", RegexOptions.CultureInvariant)]
    private static partial Regex BareNumber();
}
