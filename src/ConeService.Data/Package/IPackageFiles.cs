namespace ConeService.Data;

/// <summary>The files of one data package, wherever they are kept.</summary>
public interface IPackageFiles
{
    /// <summary>What to call the package in a fault while its own name is not known yet.</summary>
    string Label { get; }

    /// <summary>Names of all files, relative to the package, parts separated by <c>/</c>.</summary>
    /// <exception cref="IOException">The package cannot be listed.</exception>
    IReadOnlyCollection<string> List();

    /// <summary>The bytes of a file named by <see cref="List"/>.</summary>
    /// <param name="name">One of the names of <see cref="List"/>.</param>
    /// <exception cref="IOException">The file cannot be read.</exception>
    byte[] Read(string name);
}
