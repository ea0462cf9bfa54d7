using ConeService.Contract.Cones;

namespace ConeService.Contract.Datasets;

/// <summary>The data package in use.</summary>
/// <param name="DatasetVersion">Its version; overlays stand behind a plus sign.</param>
/// <param name="Title">Its title.</param>
/// <param name="License">Its licence, an SPDX id.</param>
/// <param name="Checksum">SHA-256 over the checksums of its files.</param>
/// <param name="Resources">Its tables, with rows, sizes and SHA-256 of each file.</param>
/// <param name="ConfidenceCounts">How many printed end points have each confidence.</param>
/// <param name="Corrections">Values adopted against the print, with reason and evidence.</param>
/// <param name="ChangeLog">What changed between versions, Markdown.</param>
/// <param name="CodeVersion">Version of the code that answers from it.</param>
/// <param name="CodeCommit">Commit that the code was built from; null when the build did not know it.</param>
/// <param name="PackageNotUsed">A package that lies in the place of the one in use and is not used; null when there is none, and in
/// answers pinned to a version.</param>
public sealed record DatasetDescription(
    string DatasetVersion,
    string Title,
    string License,
    string Checksum,
    IReadOnlyList<PackageFile> Resources,
    IReadOnlyList<ConfidenceCount> ConfidenceCounts,
    IReadOnlyList<Correction> Corrections,
    string ChangeLog,
    string CodeVersion = "",
    string? CodeCommit = null,
    PackageNotUsed? PackageNotUsed = null)
{
    /// <summary>Number of rows of all tables.</summary>
    public int Rows => Resources.Sum(r => r.Rows);

    /// <summary>The base package to take away whole.</summary>
    public IReadOnlyList<Download> Downloads { get; init; } = [];

    /// <summary>Released versions before this one: what changed since is at /v1/dataset/changes.</summary>
    public IReadOnlyList<string> EarlierVersions { get; init; } = [];
}
