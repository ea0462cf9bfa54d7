namespace ConeService.Contract.Datasets;

/// <summary>One file of a data package as it was read.</summary>
/// <param name="Package">Name of the package it belongs to.</param>
/// <param name="Name">Name of the table.</param>
/// <param name="Path">File name inside the package.</param>
/// <param name="Title">What the table holds.</param>
/// <param name="Rows">Number of rows.</param>
/// <param name="Bytes">Size of the file in bytes.</param>
/// <param name="Sha256">SHA-256 of the file, hexadecimal.</param>
public sealed record PackageFile(string Package, string Name, string Path, string Title, int Rows, long Bytes, string Sha256);
