using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Study;
using ConeService.Contract.Texts;

namespace ConeService.Api.Features.Cards;

/// <summary>The terms of the trade: those of a course, those of a letter, or all by their names.</summary>
internal static class GlossaryCard
{
    /// <summary>Name of the card.</summary>
    public const string Path = "glossary";

    public static readonly string[] Names = ["term", "letter"];

    // What a short card tells that was asked nothing.
    private static readonly string[] Beginning = ["bisque", "cone", "greenware", "heat-work"];

    public static Card Of(CardAsk ask)
    {
        var all = ask.Reference.Study.Terms().Items;
        RefusedException? refused = null;
        IReadOnlyList<Term> shown = [];
        try
        {
            shown = Chosen(ask, all);
        }
        catch (RefusedException failure)
        {
            refused = failure;
        }

        var title = ask["term"] is not null && shown.Count == 1 ? shown[0].Name : "Words of the kiln room";
        return new(
            CardFrame.Path(Path, ask, Names), title, "Terms of the trade in everyday English.",
            body => Write(body, ask, all, shown, refused),
            [.. (shown.Count > 0 ? shown : all).SelectMany(t => t.Sources).Distinct()])
        {
            Refused = refused,
        };
    }

    /// <summary>The letters with which terms begin.</summary>
    public static IEnumerable<string> Letters(IEnumerable<Term> all) =>
        all.Select(t => t.Name[..1].ToUpperInvariant()).Distinct().Order(StringComparer.Ordinal);

    // A course asks for several terms at once; each is found by its name or by another word for it, and else by a part of one.
    private static List<Term> Chosen(CardAsk ask, IReadOnlyList<Term> all)
    {
        if (ask["term"] is { } sent)
        {
            var words = sent.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            return [.. words.SelectMany(w => Named(w, all)).Distinct()];
        }

        if (ask["letter"] is not { } letter) return [];
        var own = all.Where(t => t.Name.StartsWith(letter, StringComparison.OrdinalIgnoreCase)).ToList();
        return own.Count > 0 ? own : throw Unknown("letter", letter, Letters(all), null);
    }

    private static List<Term> Named(string word, IReadOnlyList<Term> all)
    {
        IEnumerable<string> Of(Term term) => [term.Id, term.Name, .. term.Synonyms];
        var exact = all.Where(t => Of(t).Contains(word, StringComparer.OrdinalIgnoreCase)).ToList();
        if (exact.Count > 0) return exact;
        var part = all.Where(t => Of(t).Any(w => w.Contains(word, StringComparison.OrdinalIgnoreCase))).ToList();
        if (part.Count > 0) return part;
        throw Unknown("term", word, [], NearMatches.Find(word, all.SelectMany(Of)) is [var near, ..] ? near : null);
    }

    private static RefusedException Unknown(string member, string sent, IEnumerable<string> there, string? near) => new(new Finding(
        FindingCodes.WordUnknown, member, sent, Message.Of("members.word-unknown", ("sent", sent), ("member", member)),
        Message.Verbatim(there), near is null ? null : Message.Of("answers.near-match", ("near", near))));

    private static void Write(CardBody body, CardAsk ask, IReadOnlyList<Term> all, IReadOnlyList<Term> shown, RefusedException? refused)
    {
        new CardForm(ask, Path).Line("term", "A word", "candling").Into(body, "Look up");
        CardFrame.Wrong(body, refused);
        // A short card has no room for every letter beside what was found.
        var letters = Letters(all).Select(l => CardWords.Link(ask.Look, Path, l, "letter=" + l)).ToList();
        if (ask.Look.IsShort && shown.Count > 0)
            body.Say(CardWords.Link(ask.Look, Path, "All words"), "All words", "", needed: true);
        else
            body.Place($"<p class=\"letters\">All words: {string.Join(' ', letters)}</p>", ask.Look.IsShort ? 110 : 64, needed: true);
        if (shown.Count == 1)
        {
            Alone(body, ask, shown[0]);
        }
        else if (shown.Count > 1)
        {
            Meanings(body, "What they mean", shown);
        }
        else if (ask.Look.IsShort)
        {
            Meanings(body, "To begin with", all.Where(t => Beginning.Contains(t.Id)));
        }
        else
        {
            var links = all.Select(t => CardWords.Link(ask.Look, Path, t.Name, "term=" + t.Id));
            body.Place($"<p class=\"words\">{string.Join(" · ", links)}</p>", 27 * ((all.Sum(t => t.Name.Length + 4) / 56) + 1));
        }
    }

    private static void Meanings(CardBody body, string caption, IEnumerable<Term> terms) =>
        body.Table(caption, ["Term", "Meaning"], terms.Select(t => (Cell[])[t.Name, t.Meaning]));

    private static void Alone(CardBody body, CardAsk ask, Term term)
    {
        body.Say(term.Meaning, "lead", needed: true);
        if (term.Synonyms.Count > 0) body.Say($"Also: {string.Join(", ", term.Synonyms)}.");
        if (term.Note is { } note) body.Say(note);
        var see = ask.Reference.Study.Term(term.Id).See;
        if (see.Count == 0) return;
        var links = string.Join(", ", see.Select(t => CardWords.Link(ask.Look, Path, t.Name, "term=" + t.Id)));
        body.Say($"See also: {links}.", $"See also: {string.Join(", ", see.Select(t => t.Name))}.", "");
    }
}
