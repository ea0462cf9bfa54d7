using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace ConeService.Data;

/// <summary>What packages on disk look like from outside, to see that they changed without reading them whole.</summary>
/// <param name="Descriptors">
/// Checksums of what decides that a package is another: datapackage.json of a directory, an archive as a whole. Read anew each time,
/// by the path: a directory that was renamed and a link that was turned have other contents and nothing else that can be relied on.
/// </param>
/// <param name="Files">Names, sizes, times and targets of links of all files: a copy that still runs changes them.</param>
internal sealed record PackageStamp(string Descriptors, string Files)
{
    private static readonly EnumerationOptions Everything = new() { RecurseSubdirectories = true, AttributesToSkip = 0 };

    public static PackageStamp Of(IEnumerable<string> paths)
    {
        var (descriptors, files) = (new StringBuilder(), new StringBuilder());
        foreach (var path in paths)
        {
            try
            {
                Add(path, descriptors, files);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                descriptors.Append('-');
            }

            descriptors.Append('\n');
        }

        return new(descriptors.ToString(), files.ToString());
    }

    private static void Add(string path, StringBuilder descriptors, StringBuilder files)
    {
        var isArchive = PackageFiles.IsArchive(path);
        using (var decides = File.OpenRead(isArchive ? path : Path.Combine(path, PackageDescriptor.FileName)))
            descriptors.Append(Convert.ToHexStringLower(SHA256.HashData(decides)));
        var all = isArchive ? [new FileInfo(path)] : new DirectoryInfo(path).EnumerateFiles("*", Everything);
        foreach (var file in all.OrderBy(f => f.FullName, StringComparer.Ordinal))
        {
            files.Append(CultureInfo.InvariantCulture,
                $"{file.FullName} {file.Length} {file.LastWriteTimeUtc.Ticks} {file.LinkTarget}\n");
        }
    }
}
