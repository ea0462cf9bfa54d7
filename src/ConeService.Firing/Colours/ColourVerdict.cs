using ConeService.Contract.Colours;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Colours;

/// <summary>One colour out of notes and interactions, and what it rests on.</summary>
/// <param name="Basis">What sort of evidence.</param>
/// <param name="Colour">The colour in words; null where not covered.</param>
/// <param name="Words">The colour in words of the closed list.</param>
/// <param name="Swatch">An estimate for the eye.</param>
/// <param name="Confidence">The weakest of what it rests on.</param>
/// <param name="Explanation">How it was found.</param>
/// <param name="RestsOn">Ids of notes and rules.</param>
/// <param name="Sources">Ids of their sources.</param>
internal sealed record ColourVerdict(
    ColourBasis Basis,
    Message? Colour,
    IReadOnlyList<string> Words,
    Swatch? Swatch,
    Confidence? Confidence,
    Message Explanation,
    IReadOnlyList<string> RestsOn,
    IReadOnlyList<string> Sources)
{
    /// <summary>No source covers the question.</summary>
    public static ColourVerdict None(Message explanation) => new(ColourBasis.NotCovered, null, [], null, null, explanation, [], []);

    /// <summary>From notes, the best first; at least one.</summary>
    public static ColourVerdict Of(ColourBasis basis, Message explanation, params IReadOnlyList<ColourNote> notes) => new(
        basis,
        Phrases.Beside(notes.Select(n => Message.Verbatim(n.Colour))),
        [.. notes.SelectMany(n => n.ColourWords).Distinct()],
        notes.Count == 1 ? notes[0].Swatch : null,
        ConfidenceOrder.Weakest(notes.Select(n => n.Confidence)),
        explanation,
        [.. notes.Select(n => n.Id)],
        [.. notes.SelectMany(n => n.Sources).Distinct()]);

    /// <summary>The same with interactions that move the colour: their words come first.</summary>
    public ColourVerdict Shifted(IReadOnlyList<Interaction> shifts) => shifts.Count == 0 || Colour is null ? this : this with
    {
        Basis = ColourBasis.Interaction,
        Colour = Message.Of("colours.moved", ("colour", Colour), ("shifts", Phrases.Beside(shifts.Select(Inside)))),
        Words = [.. shifts.SelectMany(s => s.ColourWords).Concat(Words).Distinct()],
        Swatch = null,
        Confidence = ConfidenceOrder.Weakest([.. shifts.Select(s => s.Confidence), Confidence!.Value]),
        Explanation = Message.Sentences(
            [Explanation, .. shifts.Select(s => Message.Of("colours.rule-outcome", ("rule", s.Name), ("outcome", s.Outcome)))]),
        RestsOn = [.. RestsOn, .. shifts.Select(s => s.Rule)],
        Sources = [.. Sources.Concat(shifts.SelectMany(s => s.Sources)).Distinct()],
    };

    /// <summary>The same, told together with what takes colour away: a reader must not have to weigh the two alone.</summary>
    public ColourVerdict Against(IReadOnlyList<Interaction> losing) => losing.Count == 0 || Colour is null ? this : this with
    {
        Explanation = Message.Sentences(
            [Explanation, .. losing.Select(l => Message.Of("colours.and-yet", ("rule", l.Name), ("outcome", l.Outcome)))]),
    };

    // The outcome is a sentence; here it stands inside one.
    private static Message Inside(Interaction shift) =>
        Message.Verbatim(char.ToLowerInvariant(shift.Outcome[0]) + shift.Outcome[1..].TrimEnd('.'));
}
