namespace ConeService.Contract.Requests;

/// <summary>
/// How many items a list of a request holds, from where the checks and the OpenAPI document both take it. Those of the framework ask for
/// reflection that a program compiled ahead of time does not have.
/// </summary>
/// <param name="least">Fewest.</param>
/// <param name="most">Most.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class ItemsAttribute(int least, int most = int.MaxValue) : Attribute
{
    /// <summary>Fewest.</summary>
    public int Least { get; } = least;

    /// <summary>Most; the greatest whole number when there is no end.</summary>
    public int Most { get; } = most;
}
