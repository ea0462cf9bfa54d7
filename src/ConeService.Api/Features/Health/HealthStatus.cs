namespace ConeService.Api.Features.Health;

/// <summary>A probe's answer.</summary>
/// <param name="Status">live or ready.</param>
/// <param name="DatasetVersion">Version of the data package in use; null for the liveness probe.</param>
internal sealed record HealthStatus(string Status, string? DatasetVersion);
