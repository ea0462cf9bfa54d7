using ConeService.Contract.Answers;

namespace ConeService.Contract.Routes;

/// <summary>Every address of the service.</summary>
/// <param name="DatasetVersion">Version of the data package in use.</param>
/// <param name="Items">The addresses, those of one subject together.</param>
public sealed record RouteList(string DatasetVersion, IReadOnlyList<RouteSummary> Items);

/// <summary>An address and what can be done there.</summary>
/// <param name="Id">Name of the operation in the OpenAPI document.</param>
/// <param name="Name">What it answers, in a few words.</param>
/// <param name="Href">The address, a URI template (RFC 6570); without braces it is a link.</param>
/// <param name="Methods">HTTP methods.</param>
/// <param name="Formats">Media types of its answers, the usual one first.</param>
public sealed record RouteSummary(
    string Id, string Name, Address Href, IReadOnlyList<string> Methods, IReadOnlyList<string> Formats);
