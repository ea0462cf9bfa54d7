using System.Reflection;
using ConeService.Data;

namespace ConeService.Api.Features.Datasets;

/// <summary>The released data packages before the one of this build, which travel inside this assembly.</summary>
internal static class ReleasedPackages
{
    private const string Prefix = "releases/cone-service-data-";
    private const string Suffix = ".zip";
    private static readonly Assembly Home = typeof(ReleasedPackages).Assembly;

    /// <summary>Their versions, newest first.</summary>
    public static IReadOnlyList<string> Versions { get; } =
    [
        .. Home.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(n => n[Prefix.Length..^Suffix.Length]).OrderByDescending(Version.Parse),
    ];

    /// <summary>Reads one, which costs about as much as a start; what is made of it is kept, not the package.</summary>
    public static Dataset Load(string version) => DatasetLoader.Load(new ZipPackageFiles(
        version, () => Home.GetManifestResourceStream(Prefix + version + Suffix)
            ?? throw new FileNotFoundException("There is no package of this version.", version)));
}
