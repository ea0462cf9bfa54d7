using System.Reflection;

namespace ConeService.Data;

/// <summary>The reference package that travels inside this assembly.</summary>
public sealed class EmbeddedPackageFiles : IPackageFiles
{
    private const string Prefix = "data/";
    private static readonly Assembly Home = typeof(EmbeddedPackageFiles).Assembly;

    /// <inheritdoc />
    public string Label => "embedded";

    /// <inheritdoc />
    public IReadOnlyCollection<string> List() =>
        [.. Home.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Select(n => n[Prefix.Length..])];

    /// <inheritdoc />
    public byte[] Read(string name)
    {
        using var stream = Home.GetManifestResourceStream(Prefix + name)
            ?? throw new FileNotFoundException($"The embedded package has no file {name}.", name);
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
