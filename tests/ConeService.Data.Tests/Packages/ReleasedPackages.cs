using System.IO.Compression;

namespace ConeService.Data.Tests;

/// <summary>Reference packages as they were shipped at older versions, and packages as ZIP archives.</summary>
internal static class ReleasedPackages
{
    public static string Path(string version) => System.IO.Path.Combine(
        Repository.Root, "releases", $"cone-service-data-{version}.zip");

    /// <summary>Writes beside the archive and moves it in place, as a careful copy does.</summary>
    public static void Zip(IPackageFiles package, string archive)
    {
        var beside = archive + ".part";
        using (var zip = ZipFile.Open(beside, ZipArchiveMode.Create))
        {
            foreach (var name in package.List())
            {
                using var entry = zip.CreateEntry(name).Open();
                entry.Write(package.Read(name));
            }
        }

        File.Move(beside, archive, overwrite: true);
    }
}
