using ConeService.Firing;

namespace ConeService.Api.Features.Cards;

/// <summary>A question to a card.</summary>
/// <param name="Reference">The data in use.</param>
/// <param name="Id">What stands at the end of its address; empty where nothing does.</param>
/// <param name="Query">The parameters of the address; a field of a form that was left empty is not there.</param>
/// <param name="Look">The look.</param>
internal sealed record CardAsk(FiringReference Reference, string Id, IReadOnlyDictionary<string, string> Query, CardLook Look)
{
    /// <summary>A parameter; null where it was not given.</summary>
    public string? this[string name] => Query.GetValueOrDefault(name);
}
