using System.Reflection;

namespace ConeService.Api.Features.Datasets;

/// <summary>
/// The package of this build in one file: as an archive, as one JSON document, and as a database. They are made with the build and travel
/// inside this assembly, since the service itself holds nothing that could write a database.
/// </summary>
internal static class BuiltPackage
{
    private static readonly Assembly Home = typeof(BuiltPackage).Assembly;

    /// <summary>The file of a form; null where the package could not be sealed when this was built.</summary>
    /// <param name="form">The extension of the file: zip, json or sqlite.</param>
    public static byte[]? Read(string form)
    {
        using var stream = Home.GetManifestResourceStream("package." + form);
        if (stream is null) return null;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
