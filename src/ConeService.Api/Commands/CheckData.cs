using ConeService.Data;
using ConeService.Firing;

namespace ConeService.Api.Commands;

/// <summary>
/// <c>check-data [path] [--overlay path]… [--seal]</c>: validates a package, a directory or a ZIP archive, as the service would at
/// start. What it only warns of fails nothing. With <c>--seal</c> it writes size and SHA-256 of every file into the datapackage.json
/// of each directory named, if the package is valid with them.
/// </summary>
internal static class CheckData
{
    private const string Usage = "Usage: check-data [path] [--overlay path]… [--seal]";

    public static int Run(string[] args, TextWriter output)
    {
        var overlays = new List<string>();
        string? path = null;
        var seal = false;
        for (var i = 0; i < args.Length; i++)
        {
            if (args[i] == "--overlay" && i + 1 < args.Length) overlays.Add(args[++i]);
            else if (args[i] == "--seal") seal = true;
            else if (path is null && !args[i].StartsWith('-')) path = args[i];
            else
            {
                output.WriteLine($"check-data does not know “{args[i]}”. {Usage}");
                return 2;
            }
        }

        string[] sealedOnes = seal ? path is null ? [.. overlays] : [path, .. overlays] : [];
        if (seal && (sealedOnes.Length == 0 || !Array.TrueForAll(sealedOnes, Directory.Exists)))
        {
            output.WriteLine($"--seal writes into the directories named; name one, no archive. {Usage}");
            return 2;
        }

        try
        {
            IPackageFiles Files(string at) => seal ? SealWriter.Write(PackageFiles.At(at)) : PackageFiles.At(at);
            var package = path is null ? new EmbeddedPackageFiles() : Files(path);
            var added = overlays.ConvertAll(Files);
            var dataset = DatasetLoader.Load(package, added, [FiringReference.Faults]);
            var (rows, tables) = (dataset.Resources.Sum(r => r.Rows), dataset.Resources.Count);
            output.WriteLine($"{dataset.Title} {dataset.VersionId} is valid: {rows} rows in {tables} tables, checksum {dataset.Checksum}.");
            foreach (var warning in dataset.Warnings) output.WriteLine($"Warning: {warning}");
            foreach (var (at, files) in sealedOnes.Zip(path is null ? added : [package, .. added])) Write(at, files, output);
            return 0;
        }
        catch (InvalidPackageException invalid)
        {
            output.WriteLine(invalid.Message);
            return 1;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            output.WriteLine(failure.Message);
            return 1;
        }
    }

    // Beside it and then in its place: who reads meanwhile reads the old one or the new one. A hidden file is no part of a package.
    private static void Write(string directory, IPackageFiles files, TextWriter output)
    {
        const string Descriptor = "datapackage.json";
        var (file, part) = (Path.Combine(directory, Descriptor), Path.Combine(directory, $".{Descriptor}.part"));
        File.WriteAllBytes(part, files.Read(Descriptor));
        File.Move(part, file, overwrite: true);
        output.WriteLine($"Sealed {file}.");
    }
}
