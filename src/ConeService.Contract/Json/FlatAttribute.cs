namespace ConeService.Contract.Json;

/// <summary>
/// Writes the members of this member beside those of its owner, so that a detail reads like the item of the list it belongs
/// to. A member that both have is the owner's.
/// </summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class FlatAttribute : Attribute;
