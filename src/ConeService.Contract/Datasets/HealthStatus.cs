namespace ConeService.Contract.Datasets;

/// <summary>A probe's answer.</summary>
/// <param name="Status">live or ready.</param>
/// <param name="DatasetVersion">Version of the data package in use; null for the liveness probe.</param>
/// <param name="PackageNotUsed">A package that lies in its place and is not used; null when there is none, and for the liveness
/// probe.</param>
public sealed record HealthStatus(string Status, string? DatasetVersion, PackageNotUsed? PackageNotUsed = null);
