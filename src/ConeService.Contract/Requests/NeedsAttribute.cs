namespace ConeService.Contract.Requests;

/// <summary>
/// The members without which a request is refused, whatever else it holds; the OpenAPI document lists them as required. On a
/// member: what its object needs there beyond what it needs everywhere.
/// </summary>
/// <param name="members">Names of the properties.</param>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Property, Inherited = false)]
public sealed class NeedsAttribute(params string[] members) : Attribute
{
    /// <summary>Names of the properties.</summary>
    public IReadOnlyList<string> Members { get; } = members;
}
