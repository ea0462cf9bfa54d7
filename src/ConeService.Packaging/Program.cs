using ConeService.Data;
using ConeService.Packaging;

// Run by the build of the service: writes the embedded package as a database to the path given. A package that is not valid, such as
// one that was edited and not yet sealed, has none: the command that seals it must be able to be built.
if (args is not [var path])
{
    Console.Error.WriteLine("Usage: ConeService.Packaging file");
    return 2;
}

File.Delete(path);
try
{
    PackageDatabaseWriter.Write(DatasetLoader.LoadEmbedded(), path);
}
catch (InvalidPackageException invalid)
{
    Console.WriteLine($"No database was made of the package, which is not valid. {invalid.Faults[0]}");
}

return 0;
