using ConeService.Data;
using ConeService.Firing;

namespace ConeService.Api.Commands;

/// <summary>
/// <c>check-data [path] [--overlay path]…</c>: validates a package, a directory or a ZIP archive, as the service would at start.
/// What it only warns of fails nothing.
/// </summary>
internal static class CheckData
{
    public static int Run(string[] args, TextWriter output)
    {
        var overlays = new List<string>();
        string? path = null;
        for (var i = 0; i < args.Length; i++)
        {
            if (args[i] == "--overlay" && i + 1 < args.Length) overlays.Add(args[++i]);
            else if (path is null && !args[i].StartsWith('-')) path = args[i];
            else
            {
                output.WriteLine($"check-data does not know “{args[i]}”. Usage: check-data [path] [--overlay path]…");
                return 2;
            }
        }

        try
        {
            var dataset = DatasetLoader.Load(new DatasetOptions { Path = path, Overlays = overlays }, [FiringReference.Faults]);
            var (rows, tables) = (dataset.Resources.Sum(r => r.Rows), dataset.Resources.Count);
            output.WriteLine($"{dataset.Title} {dataset.VersionId} is valid: {rows} rows in {tables} tables, checksum {dataset.Checksum}.");
            foreach (var warning in dataset.Warnings) output.WriteLine($"Warning: {warning}");
            return 0;
        }
        catch (InvalidPackageException invalid)
        {
            output.WriteLine(invalid.Message);
            return 1;
        }
    }
}
