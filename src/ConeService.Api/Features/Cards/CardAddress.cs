using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Extensions.Primitives;

namespace ConeService.Api.Features.Cards;

/// <summary>The card that an address names, for the index and for oEmbed.</summary>
internal static class CardAddress
{
    /// <summary>The parameters of a query that say something: a field of a form that was left empty does not.</summary>
    public static IReadOnlyDictionary<string, string> Asked(IEnumerable<KeyValuePair<string, StringValues>> query) => query
        .Where(q => !string.IsNullOrWhiteSpace(q.Value.ToString()))
        .ToDictionary(q => q.Key, q => q.Value.ToString(), StringComparer.OrdinalIgnoreCase);

    /// <summary>The card.</summary>
    /// <param name="snapshot">The data in use.</param>
    /// <param name="address">Its address below /cards, with its question.</param>
    /// <param name="parameter">The parameter in which the address stands.</param>
    /// <param name="size">How much of it is shown; null: as the address says.</param>
    /// <exception cref="RefusedException">There is no such card, or it would refuse the question itself.</exception>
    public static (Card Card, CardLook Look) Read(Snapshot snapshot, string address, string parameter, CardSize? size = null)
    {
        var parts = address.Split('?', 2);
        var path = Uri.UnescapeDataString(parts[0].Trim('/'));
        if (CardKinds.Find(path) is not var (kind, id) || path.Length == 0)
        {
            var there = CardKinds.All.Select(k => k.Pattern).ToList();
            throw new RefusedException(new Finding(
                FindingCodes.NotFound, parameter, address, Message.Of("answers.not-found", ("noun", "card"), ("id", path)),
                Message.Verbatim(there)));
        }

        // What the card itself would refuse is refused here too: else a frame would show a refusal.
        var sent = parts.Length > 1 ? QueryHelpers.ParseQuery(parts[1]) : [];
        QueryGuard.Check(sent, [.. kind.Names, .. CardLook.Names, PinnedDataset.Parameter], allowsEmpty: true);
        if (sent.TryGetValue(PinnedDataset.Parameter, out var version)) PinnedDataset.Require(snapshot, version.ToString());
        var look = CardLook.Read(new QueryCollection(sent), CardTheme.Light);
        if (size is { } other) look = look with { Size = other };
        var card = kind.Make(new(snapshot.Reference, id, Asked(sent), look));
        return (card.Refused is null ? card : throw card.Refused, look);
    }
}
