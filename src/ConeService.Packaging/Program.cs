using ConeService.Data;
using ConeService.Packaging;

// Writes the embedded package to the path given: as one JSON document to a .json, as an archive to a .zip, and to any other as a
// database. The build of the service makes the database. A package that is not valid, such as one that was edited and not yet sealed,
// has none: the command that seals it must be able to be built.
if (args is not [var path])
{
    Console.Error.WriteLine("Usage: ConeService.Packaging file");
    return 2;
}

File.Delete(path);
try
{
    var dataset = DatasetLoader.LoadEmbedded();
    switch (Path.GetExtension(path))
    {
        case ".json": File.WriteAllBytes(path, PackageJsonWriter.Write(dataset)); break;
        case ".zip": File.WriteAllBytes(path, PackageArchive.Zip(dataset.Files)); break;
        default: PackageDatabaseWriter.Write(dataset, path); break;
    }
}
catch (InvalidPackageException invalid)
{
    Console.WriteLine($"Nothing was made of the package, which is not valid. {invalid.Faults[0]}");
}

return 0;
