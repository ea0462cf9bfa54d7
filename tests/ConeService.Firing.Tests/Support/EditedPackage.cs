using System.Text;
using ConeService.Data;

namespace ConeService.Firing.Tests.Support;

/// <summary>The embedded package with other words in one of its files.</summary>
/// <param name="file">The file.</param>
/// <param name="what">What stands there; it must.</param>
/// <param name="by">What is to stand there instead.</param>
internal sealed class EditedPackage(string file, string what, string by) : IPackageFiles
{
    private readonly EmbeddedPackageFiles own = new();

    public string Label => own.Label;

    public IReadOnlyCollection<string> List() => own.List();

    public byte[] Read(string name)
    {
        if (name != file) return own.Read(name);
        var text = Encoding.UTF8.GetString(own.Read(name));
        Assert.Contains(what, text, StringComparison.Ordinal);
        return Encoding.UTF8.GetBytes(text.Replace(what, by, StringComparison.Ordinal));
    }
}
