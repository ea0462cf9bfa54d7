namespace ConeService.Data;

/// <summary>
/// What datapackage.json says of the package's files: size and SHA-256 of each table beside its path, of the other files under
/// <c>seal</c>, and there of datapackage.json itself. A damaged copy then differs from what was sealed, whatever the damage.
/// </summary>
/// <param name="Files">The files that have a size or a hash, tables and others.</param>
/// <param name="Own">SHA-256 of datapackage.json with these very digits as zeros; null when it says none.</param>
internal sealed record PackageSeal(IReadOnlyList<SealedFile> Files, string? Own)
{
    /// <summary>Base packages of this version and newer must be sealed.</summary>
    public static readonly Version Since = new(1, 7);

    /// <summary>How a hash is written (Data Package 2.0, <c>hash</c>): the algorithm, then the digits.</summary>
    public const string Prefix = "sha256:";
}

/// <summary>Size and hash of one file.</summary>
/// <param name="Path">File name inside the package.</param>
/// <param name="Bytes">Size in bytes; null when it is not said.</param>
/// <param name="Hash">SHA-256, 64 small hexadecimal digits; null when it is not said.</param>
internal sealed record SealedFile(string Path, long? Bytes, string? Hash);
