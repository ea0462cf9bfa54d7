using ConeService.Contract.Answers;

namespace ConeService.Api.Features.Cards;

/// <summary>A card before it is put into a page.</summary>
/// <param name="Path">Its address below /cards, with its question.</param>
/// <param name="Title">Its title.</param>
/// <param name="Description">What it tells, in a sentence.</param>
/// <param name="Write">Writes what stands on it, the most important first.</param>
/// <param name="Sources">Ids of its sources.</param>
internal sealed record Card(
    string Path, string Title, string Description, Action<CardBody> Write, IReadOnlyList<string> Sources)
{
    /// <summary>Why what was asked can't be answered, which the card then says; null where it is answered.</summary>
    public RefusedException? Refused { get; init; }
}
