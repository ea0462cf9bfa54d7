using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>What is said of a piece must agree with the firings it has had, and those must have left it sound.</summary>
internal sealed class HistoryRule : IPieceRule
{
    public IReadOnlyList<string> RestsOn { get; } =
        [LoadRuleIds.FiringOrder, LoadRuleIds.BodyStandsCone, LoadRuleIds.BisqueBelowMaturity];

    public void Judge(PieceCase c, Judgement judgement)
    {
        var history = c.Piece.History;
        if (history.Said is { } said)
        {
            judgement.Find(ReasonCode.WrongOrder, ReasonSeverity.Review)?.Because(LoadRuleIds.FiringOrder, null,
                Message.Of(
                    "loads.state-and-history-differ", ("said", EnumWords.Word(said)), ("derived", EnumWords.Word(c.Piece.State))),
                Message.Of("loads.correct-history"));
        }

        if (c.Piece.State < PieceState.GlazeFired) FiredCoats(c, judgement);
        if (history.Hottest is { } had && c.Piece.Body is { Mature: { } mature } body && had.Order > mature.Max.Order)
        {
            judgement.Find(ReasonCode.BodyOverfired, ReasonSeverity.Review, withinRange: true)?.Because(LoadRuleIds.BodyStandsCone, body,
                Message.Of("loads.body-was-overfired", ("body", body.NameFirst), ("was", had.Text), ("max", mature.Max.Text)),
                Message.Of("loads.look-for-bloats"));
        }
        else if (history.Bisque is { } bisque && c.IsGlazed
            && c.Piece is { State: PieceState.Bisqued, Body: { MaturesInBisque: false } tight }
            && (BisqueRangeRule.IsTooTight(c.Tables, tight, bisque) || BisqueRangeRule.IsFarAbove(tight, bisque)))
        {
            judgement.Find(ReasonCode.BodyOverfired, ReasonSeverity.Review, withinRange: true)?.Because(
                LoadRuleIds.BisqueBelowMaturity, tight,
                BisqueRangeRule.IsTooTight(c.Tables, tight, bisque)
                    ? Message.Of("loads.body-was-bisqued-tight", ("body", tight.NameFirst), ("was", bisque.Text))
                    : Message.Of(
                        "loads.body-was-bisqued-hot",
                        ("body", tight.NameFirst), ("was", bisque.Text), ("min", tight.BisqueMin.Text), ("max", tight.BisqueMax.Text)),
                Message.Of("loads.warm-or-thicken", ("min", tight.BisqueMin.Text), ("max", tight.BisqueMax.Text)));
        }
    }

    private static void FiredCoats(PieceCase c, Judgement judgement)
    {
        foreach (var item in c.Piece.Coats)
        {
            if (!item.IsFired || !(item.Coat.Melts || item.Coat.AppliedOn.Has(PieceState.GlazeFired))) continue;
            judgement.Find(ReasonCode.WrongOrder, ReasonSeverity.Review)?.Because(LoadRuleIds.FiringOrder, item.Coat,
                Message.Of("loads.fired-coat-on-unfired", ("coat", item.Coat.NameFirst)), Message.Of("loads.correct-history"));
        }
    }
}
