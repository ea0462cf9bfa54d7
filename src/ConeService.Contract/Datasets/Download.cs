using ConeService.Contract.Answers;

namespace ConeService.Contract.Datasets;

/// <summary>The base package in one file; the file of an address never changes.</summary>
/// <param name="Id">Name of the file.</param>
/// <param name="Name">What it is.</param>
/// <param name="Href">Where it is.</param>
/// <param name="MediaType">Its media type.</param>
/// <param name="Bytes">Its size.</param>
/// <param name="Sha256">Its SHA-256, hexadecimal.</param>
public sealed record Download(string Id, string Name, Address Href, string MediaType, long Bytes, string Sha256);
