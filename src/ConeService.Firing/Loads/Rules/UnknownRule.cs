using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// What nobody knows cannot be judged; the rest of the piece still is. What a mark does not say is a matter for whoever fires
/// where this firing depends on it, and else a word of warning.
/// </summary>
internal sealed class UnknownRule : IPieceRule
{
    public IReadOnlyList<string> RestsOn { get; } = [LoadRuleIds.KnownMaterials];

    public void Judge(PieceCase c, Judgement judgement)
    {
        foreach (var unknown in c.Piece.Unknown)
        {
            judgement.Find(ReasonCode.UnknownMaterial, Severity(c, unknown.What))?.Because(
                LoadRuleIds.KnownMaterials,
                unknown.What == UnknownAs.BaseClay ? c.Piece.Body : null,
                Missing(c, unknown),
                unknown.What switch
                {
                    UnknownAs.BaseClay => Message.Of("loads.name-base-clay"),
                    UnknownAs.Body or UnknownAs.NoBody => Message.Of("loads.choose-body"),
                    UnknownAs.Coat => Message.Of("loads.choose-coat"),
                    UnknownAs.State => Message.Of("loads.look-at-piece"),
                    _ => Message.Of("loads.send-all-cones"),
                },
                unknown.Within);
        }
    }

    private static ReasonSeverity Severity(PieceCase c, UnknownAs what)
    {
        var bisque = c.Firing.Kind == FiringKind.Bisque;
        return what switch
        {
            // A bisque within the range that all such clays share suits them whatever they mature at.
            UnknownAs.BaseClay when bisque && c.Piece.Body is { } body
                && !c.Firing.Cone.IsBelow(body.BisqueMin) && c.Firing.Cone.Order <= body.BisqueMax.Order => ReasonSeverity.Note,
            UnknownAs.MarksOfBody when bisque && c.Piece.Body?.Mature is not null => ReasonSeverity.Note,
            UnknownAs.MarksOfBody or UnknownAs.MarksOfCoat when c.Firing.Kind == FiringKind.Overglaze => ReasonSeverity.Note,
            UnknownAs.Bisque when !bisque || c.Piece.Body?.Mature is not null => ReasonSeverity.Note,
            _ => ReasonSeverity.Review,
        };
    }

    private static Message Missing(PieceCase c, UnknownMaterial unknown)
    {
        if (unknown.Told is { } told) return told;
        var cone = c.Firing.Cone.Text;
        if (unknown.What == UnknownAs.NoBody) return Message.Of("loads.body-not-told", ("cone", cone));
        if (unknown.What == UnknownAs.BaseClay) return Message.Of("loads.base-clay-not-named", ("body", c.Piece.Body!.NameFirst));
        var what = EnumWords.Word(unknown.What);
        return unknown.Near.Count == 0
            ? Message.Of("loads.material-unknown", ("what", what), ("sent", unknown.Sent), ("cone", cone))
            : Message.Of("loads.material-unknown-near", ("what", what), ("sent", unknown.Sent), ("cone", cone), ("near", unknown.Near));
    }
}
