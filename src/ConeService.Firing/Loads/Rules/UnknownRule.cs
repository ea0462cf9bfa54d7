using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>What nobody knows cannot be judged; the rest of the piece still is.</summary>
internal sealed class UnknownRule : IPieceRule
{
    public IReadOnlyList<string> RestsOn { get; } = [LoadRuleIds.KnownMaterials];

    public void Judge(PieceCase c, Judgement judgement)
    {
        foreach (var unknown in c.Piece.Unknown)
        {
            judgement.Find(ReasonCode.UnknownMaterial, ReasonSeverity.Review)?.Because(
                LoadRuleIds.KnownMaterials,
                unknown.What == UnknownAs.BaseClay ? c.Piece.Body : null,
                Missing(c, unknown),
                unknown.What switch
                {
                    UnknownAs.BaseClay => Message.Of("loads.name-base-clay"),
                    UnknownAs.Body => Message.Of("loads.choose-body"),
                    _ => Message.Of("loads.choose-coat"),
                });
        }
    }

    private static Message Missing(PieceCase c, UnknownMaterial unknown)
    {
        if (unknown.What == UnknownAs.BaseClay) return Message.Of("loads.base-clay-not-named", ("body", c.Piece.Body!.NameFirst));
        var (what, cone) = (EnumWords.Word(unknown.What), c.Firing.Cone.Text);
        return unknown.Near.Count == 0
            ? Message.Of("loads.material-unknown", ("what", what), ("sent", unknown.Sent), ("cone", cone))
            : Message.Of("loads.material-unknown-near", ("what", what), ("sent", unknown.Sent), ("cone", cone), ("near", unknown.Near));
    }
}
