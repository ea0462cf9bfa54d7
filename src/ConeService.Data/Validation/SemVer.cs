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
    private const string Version = Number + @"\." + Number + @"\." + Number + "(-" + Identifier + @"(\." + Identifier + ")*)?";

    public static bool IsVersion(string text) => Whole().IsMatch(text);

    /// <summary>The version a change-log line heads, or null: <c>## 1.2.0 - 2026-11-25</c>.</summary>
    public static string? OfHeading(string line) => Heading().Match(line) is { Success: true } m ? m.Groups["version"].Value : null;

    [GeneratedRegex("^" + Version + @"\z")]
    private static partial Regex Whole();

    [GeneratedRegex("^## (?<version>" + Version + @")( .*)?\z")]
    private static partial Regex Heading();
}
