using ConeService.Data;

namespace ConeService.Contract.Answers;

/// <summary>Which atmospheres a member may name; the OpenAPI document lists these and no others.</summary>
/// <param name="use">What the atmosphere is said of.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class AtmosphereWordsAttribute(AtmosphereUse use) : Attribute
{
    /// <summary>What the atmosphere is said of.</summary>
    public AtmosphereUse Use { get; } = use;
}
