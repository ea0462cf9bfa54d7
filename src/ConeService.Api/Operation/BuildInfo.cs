using System.Reflection;

namespace ConeService.Api.Operation;

/// <summary>Which build of the code runs: version and commit, as the build wrote them into the assembly.</summary>
internal static class BuildInfo
{
    private static readonly string[] Parts =
        (typeof(BuildInfo).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "").Split('+', 2);

    /// <summary>Version of the code.</summary>
    public static string Version => Parts[0];

    /// <summary>The commit that was built; null when the build did not know it.</summary>
    public static string? Commit => Parts.Length > 1 ? Parts[1] : null;
}
