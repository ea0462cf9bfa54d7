using ConeService.Contract.Answers;

namespace ConeService.Contract.Study;

/// <summary>Something that leads to another resource.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Href">Its address.</param>
public sealed record NamedLink(string Id, string Name, Address Href);
