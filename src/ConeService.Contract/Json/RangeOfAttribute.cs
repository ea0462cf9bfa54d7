namespace ConeService.Contract.Json;

/// <summary>
/// Writes …Min, …Best and …Max as one member { min, best, max } of this name; stands on …Min. The whole is null where none of
/// its ends is known.
/// </summary>
/// <param name="name">The name of the whole in JSON.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class RangeOfAttribute(string name) : Attribute
{
    /// <summary>The name of the whole in JSON.</summary>
    public string Name { get; } = name;
}
