namespace ConeService.Contract.Requests;

/// <summary>The closed vocabulary that a member, or each entry of a list, takes its words from; the OpenAPI document lists them.</summary>
/// <param name="vocabulary">An enum.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class WordsOfAttribute(Type vocabulary) : Attribute
{
    /// <summary>The enum.</summary>
    public Type Vocabulary { get; } = vocabulary;
}
