using System.Text.RegularExpressions;

namespace ConeService.Data;

/// <summary>
/// The patterns of the reference package, compiled with this assembly: making one at start costs more than all that it is held against.
/// Each reads a text once, since what may follow never begins as what stands before it; others are made linear when they are met.
/// </summary>
internal static partial class KnownPatterns
{
    private const string Kebab = "[a-z0-9]+(-[a-z0-9]+)*";
    private const string Code = @"[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+(-[a-z0-9]+)*)+";
    private const string Cone = @"0?[0-9]{1,2}(\.5|a)?";
    private const string Language = "[a-z]{2,3}(-[A-Za-z0-9]{2,8})*";
    private const string Version = @"[0-9]+\.[0-9]+\.[0-9]+";
    private const string Rate = @"[0-9]+(\.[0-9]+)?|unstated";
    private const string Swatch = "#[0-9A-F]{6}";

    /// <summary>The pattern, anchored at both ends; null when it is none of these.</summary>
    public static Regex? Find(string pattern) => pattern switch
    {
        Kebab => KebabRegex(),
        Code => CodeRegex(),
        Cone => ConeRegex(),
        Language => LanguageRegex(),
        Version => VersionRegex(),
        Rate => RateRegex(),
        Swatch => SwatchRegex(),
        _ => null,
    };

    [GeneratedRegex("^(?:" + Kebab + @")\z", RegexOptions.CultureInvariant)]
    private static partial Regex KebabRegex();

    [GeneratedRegex("^(?:" + Code + @")\z", RegexOptions.CultureInvariant)]
    private static partial Regex CodeRegex();

    [GeneratedRegex("^(?:" + Cone + @")\z", RegexOptions.CultureInvariant)]
    private static partial Regex ConeRegex();

    [GeneratedRegex("^(?:" + Language + @")\z", RegexOptions.CultureInvariant)]
    private static partial Regex LanguageRegex();

    [GeneratedRegex("^(?:" + Version + @")\z", RegexOptions.CultureInvariant)]
    private static partial Regex VersionRegex();

    [GeneratedRegex("^(?:" + Rate + @")\z", RegexOptions.CultureInvariant)]
    private static partial Regex RateRegex();

    [GeneratedRegex("^(?:" + Swatch + @")\z", RegexOptions.CultureInvariant)]
    private static partial Regex SwatchRegex();
}
