using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Api.Features.Datasets;

/// <summary>
/// The base package under <c>/data/{version}</c>: its files as they are, so that a reader of Data Packages finds every table beside
/// datapackage.json, and the whole in one file. An address has the version in it, so what it answers is kept for ever.
/// </summary>
internal static class DatasetFile
{
    private const string Zip = "application/zip";
    private const string Database = "application/vnd.sqlite3";
    private const string PlainText = "text/plain; charset=utf-8";

    /// <summary>The package in one file, each with size and checksum.</summary>
    public static IReadOnlyList<Download> Downloads(Dataset dataset) =>
    [
        .. Wholes(dataset).Select(w => Of(dataset, w.File, w.Says, w.MediaType, w.Make(dataset))),
        Of(dataset, "datapackage.json", "The descriptor; every table lies beside it under the path that it names",
            JsonBody.MediaType, dataset.Files.Read("datapackage.json")),
    ];

    /// <summary>A file.</summary>
    /// <exception cref="RefusedException">There is none of that name, or another version is served.</exception>
    public static PreparedBody Body(Dataset dataset, string version, string file)
    {
        if (version != dataset.BaseVersion) throw Refuse("version", version, [dataset.BaseVersion]);
        if (Wholes(dataset).Where(w => w.File == file).Select(w => (w.MediaType, Bytes: w.Make(dataset))).ToList() is [var whole])
            return PreparedBody.Unchanging(whole.Bytes, whole.MediaType);
        return dataset.Files.List().Contains(file, StringComparer.Ordinal)
            ? PreparedBody.Unchanging(dataset.Files.Read(file), MediaType(file))
            : throw Refuse("file", file, [.. Wholes(dataset).Select(w => w.File), .. dataset.Files.List().Order(StringComparer.Ordinal)]);
    }

    private static List<(string File, string Says, string MediaType, Func<Dataset, byte[]> Make)> Wholes(Dataset dataset)
    {
        var stem = $"{dataset.Name}-{dataset.BaseVersion}";
        List<(string, string, string, Func<Dataset, byte[]>)> wholes =
        [
            ($"{stem}.zip", "The whole package, a Data Package in a ZIP archive", Zip,
                static d => Built(d, "zip") ?? PackageArchive.Zip(d.Files)),
            ($"{stem}.json", "Every table in one JSON document", JsonBody.MediaType,
                static d => Built(d, "json") ?? PackageJsonWriter.Write(d)),
        ];
        if (Built(dataset, "sqlite") is { } database)
        {
            wholes.Add((
                $"{stem}.sqlite", "A SQLite database, with a table of links for every list", Database, _ => database));
        }

        return wholes;
    }

    // Only of its own package does the build know; of one that the operator brought an archive and a document are made when asked for.
    private static byte[]? Built(Dataset dataset, string form) => dataset.Files is EmbeddedPackageFiles ? BuiltPackage.Read(form) : null;

    private static Download Of(Dataset dataset, string file, string says, string mediaType, byte[] bytes) => new(
        file, says, new($"/data/{dataset.BaseVersion}/{file}"), mediaType, bytes.LongLength,
        Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes)));

    private static string MediaType(string file) => Path.GetExtension(file) switch
    {
        ".csv" => "text/csv; charset=utf-8",
        ".json" => JsonBody.MediaType,
        ".md" => "text/markdown; charset=utf-8",
        _ => PlainText,
    };

    private static RefusedException Refuse(string parameter, string sent, IReadOnlyList<string> allowed) => new(new Finding(
        FindingCodes.NotFound, parameter, sent, Message.Of("answers.not-found", ("noun", parameter), ("id", sent)),
        Message.Verbatim(allowed),
        Message.Of("answers.not-found-listed", ("list", "/v1/dataset"))));
}
