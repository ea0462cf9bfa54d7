using ConeService.Packaging;
using Microsoft.Data.Sqlite;

namespace ConeService.Data.Tests;

/// <summary>The package in one file: an archive that anything packs alike, and a database whose references all hold.</summary>
public sealed class PackageArchiveTests
{
    [Fact]
    public void The_same_package_gives_the_same_archive_and_the_archive_the_same_package()
    {
        var embedded = new EmbeddedPackageFiles();
        var archive = PackageArchive.Zip(embedded);
        Assert.Equal(archive, PackageArchive.Zip(new ZipPackageFiles("again", () => new MemoryStream(archive))));

        var read = DatasetLoader.Load(new ZipPackageFiles("again", () => new MemoryStream(archive)));
        Assert.Equal(DatasetLoader.LoadEmbedded().Checksum, read.Checksum);
    }

    // Cone 06 at 60 °C/h is printed at 998 °C (chart of 2016).
    [Fact]
    public void The_database_has_every_row_and_no_reference_to_none()
    {
        using var directory = new TemporaryDirectory();
        var path = Path.Combine(directory.Path, "package.sqlite");
        var dataset = DatasetLoader.LoadEmbedded();
        PackageDatabaseWriter.Write(dataset, path);

        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString());
        connection.Open();
        Assert.Null(Scalar(connection, "PRAGMA foreign_key_check"));
        Assert.Equal("ok", Scalar(connection, "PRAGMA integrity_check"));
        Assert.All(dataset.Tables, t => Assert.Equal(
            (long)t.Count, Scalar(connection, $"SELECT count(*) FROM \"{t.Name.Replace('-', '_')}\"")));
        Assert.Equal(998.0, Scalar(
            connection, "SELECT celsius FROM end_points WHERE chart = 'witness-self-supporting' AND cone = '06' AND rate = '60'"));
        // Every list is a table of links, with as many rows as the lists have items.
        Assert.Equal(
            (long)dataset.Cautions.Sum(c => c.Who.Count), Scalar(connection, "SELECT count(*) FROM cautions_who"));
        Assert.Equal(
            (long)dataset.ColourNotes.Sum(n => n.Sources.Count),
            Scalar(connection, "SELECT count(*) FROM colour_notes_source JOIN sources ON sources.id = item"));
    }

    private static object? Scalar(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }
}
