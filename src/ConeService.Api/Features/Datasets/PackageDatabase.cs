using System.Reflection;

namespace ConeService.Api.Features.Datasets;

/// <summary>The SQLite database of the package of this build; it is made with the build and travels inside this assembly.</summary>
internal static class PackageDatabase
{
    private const string Resource = "package.sqlite";
    private static readonly Assembly Home = typeof(PackageDatabase).Assembly;

    /// <summary>False where the package could not be sealed when this was built.</summary>
    public static bool Exists => Home.GetManifestResourceInfo(Resource) is not null;

    /// <summary>The database.</summary>
    public static byte[] Read()
    {
        using var stream = Home.GetManifestResourceStream(Resource)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
