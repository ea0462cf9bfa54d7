using System.Globalization;
using System.Text.RegularExpressions;

namespace ConeService.Data;

/// <summary>
/// Semantic versions of packages. The build part is not allowed in a package's own version:
/// it is where <see cref="Dataset.VersionId"/> names the overlays.
/// </summary>
internal static partial class SemVer
{
    private const string Number = "(0|[1-9][0-9]*)";
    private const string Identifier = "(0|[1-9][0-9]*|[0-9]*[A-Za-z-][0-9A-Za-z-]*)";
    private const string Form = Number + @"\." + Number + @"\." + Number + "(-" + Identifier + @"(\." + Identifier + ")*)?";

    public static bool IsVersion(string text) => Whole().IsMatch(text);

    /// <summary>Major and minor version, or null when the text is no version. A pre-release counts as the version it leads to.</summary>
    public static Version? Minor(string text) =>
        IsVersion(text) && text.Split('.') is [var major, var minor, ..] && int.TryParse(major, CultureInfo.InvariantCulture, out var first)
            && int.TryParse(minor, CultureInfo.InvariantCulture, out var second)
            ? new Version(first, second)
            : null;

    /// <summary>The version a change-log line heads, or null: <c>## 1.2.0 - 2026-11-25</c>.</summary>
    public static string? OfHeading(string line) => Heading().Match(line) is { Success: true } m ? m.Groups["version"].Value : null;

    [GeneratedRegex("^" + Form + @"\z")]
    private static partial Regex Whole();

    [GeneratedRegex("^## (?<version>" + Form + @")( .*)?\z")]
    private static partial Regex Heading();
}
