using System.Text;
using ConeService.Data;

namespace ConeService.Firing.Tests.Support;

/// <summary>The reference package as it is committed, with edits.</summary>
internal sealed class EditedPackage : IPackageFiles
{
    private const string Descriptor = "datapackage.json";
    private readonly IPackageFiles files = PackageFiles.At(Path.Combine(Repository.Root, "data"));
    private readonly Dictionary<string, string> edited = [];

    /// <summary>The package as it is, to be edited.</summary>
    public EditedPackage()
    {
    }

    /// <summary>The package with other words in one of its files.</summary>
    /// <param name="file">The file.</param>
    /// <param name="what">What stands there; it must.</param>
    /// <param name="by">What is to stand there instead.</param>
    public EditedPackage(string file, string what, string by)
    {
        Assert.Contains(what, Text(file), StringComparison.Ordinal);
        edited[file] = Text(file).Replace(what, by, StringComparison.Ordinal);
    }

    public string Label => "edited";

    public IReadOnlyCollection<string> List() => files.List();

    /// <summary>A file as edited; the seal fits the edits, as a contributor would write it.</summary>
    public byte[] Read(string name) => name == Descriptor ? SealWriter.Write(new Unsealed(this)).Read(name) : Raw(name);

    /// <summary>Renames a thing wherever a table names it, so that nothing but code misses it.</summary>
    public EditedPackage Rename(string what, string by)
    {
        foreach (var table in List().Where(f => f.EndsWith(".csv", StringComparison.Ordinal)))
            edited[table] = Text(table).Replace(what, by, StringComparison.Ordinal);
        return this;
    }

    /// <summary>Takes rows out of a table; the header stays.</summary>
    public EditedPackage Without(string table, Predicate<string> row)
    {
        var lines = Text(table + ".csv").TrimEnd('\n').Split('\n');
        var kept = lines[1..].Where(l => !row(l)).ToList();
        Assert.NotEqual(lines.Length - 1, kept.Count);
        edited[table + ".csv"] = string.Concat(kept.Prepend(lines[0]).Select(l => l + "\n"));
        return this;
    }

    private byte[] Raw(string name) => edited.TryGetValue(name, out var text) ? Encoding.UTF8.GetBytes(text) : files.Read(name);

    private string Text(string file) => Encoding.UTF8.GetString(Raw(file));

    private sealed class Unsealed(EditedPackage package) : IPackageFiles
    {
        public string Label => package.Label;

        public IReadOnlyCollection<string> List() => package.List();

        public byte[] Read(string name) => package.Raw(name);
    }
}
