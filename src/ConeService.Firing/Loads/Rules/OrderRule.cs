using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>Raw, bisqued, glaze-fired, overglaze: each firing takes ware that the one before has made ready.</summary>
internal sealed class OrderRule : IPieceRule
{
    public IReadOnlyList<string> RestsOn { get; } =
    [
        LoadRuleIds.NothingRawWithOverglaze, LoadRuleIds.FiringOrder, LoadRuleIds.RawGlaze,
        LoadRuleIds.BisqueWithGlaze, LoadRuleIds.OverglazeOnGlaze, LoadRuleIds.Refire,
    ];

    /// <summary>False where a kind of firing takes no ware of a state, whatever its cone: what it usually takes is narrower.</summary>
    public static bool CanTake(FiringNeeds needs, PieceState state) => state switch
    {
        PieceState.Bisqued => needs.Row.Id is not (FiringKind.Bisque or FiringKind.Overglaze),
        PieceState.GlazeFired => needs.Row.Id != FiringKind.Bisque,
        _ => needs.Takes.Has(state),
    };

    public void Judge(PieceCase c, Judgement judgement)
    {
        switch (c.Piece.State)
        {
            case PieceState.BoneDry: Raw(c, judgement); break;
            case PieceState.Bisqued: Bisqued(c, judgement); break;
            case PieceState.GlazeFired: GlazeFired(c, judgement); break;
        }
    }

    private static void Raw(PieceCase c, Judgement judgement)
    {
        var needs = c.Firing.Needs;
        if (c.Firing.Kind == FiringKind.Overglaze)
        {
            judgement.Find(ReasonCode.WrongOrder, ReasonSeverity.Refuse)?.Because(LoadRuleIds.NothingRawWithOverglaze, null,
                Message.Of("loads.raw-with-overglaze"), Message.Of("loads.bisque-then-glaze"));
        }
        else if (!needs.Takes.Has(PieceState.BoneDry))
        {
            judgement.Find(ReasonCode.NotBisqued, ReasonSeverity.Refuse)?.Because(LoadRuleIds.FiringOrder, null,
                Message.Of("loads.raw-in-firing-for-bisqued", ("kind", needs.Kind), ("firing", needs.Name)),
                c.IsGlazed ? Message.Of("loads.bisque-first-or-single") : Message.Of("loads.bisque-first"));
        }
        else if (c.Firing.Kind == FiringKind.Bisque && c.IsGlazed)
        {
            judgement.Find(ReasonCode.NotBisqued, ReasonSeverity.Refuse)?.Because(LoadRuleIds.FiringOrder, null,
                Message.Of("loads.raw-glaze-in-bisque"), Message.Of("loads.bisque-bare-or-single"));
        }
        else if (c.IsGlazed && MadeForBisque(c) is { } made)
        {
            judgement.Find(ReasonCode.NotBisqued, ReasonSeverity.Review)?.Because(LoadRuleIds.RawGlaze, made.Coat,
                Message.Of("loads.glaze-not-for-raw-clay", ("coat", made.Coat.NameFirst)), Message.Of("loads.bisque-or-raw-glaze"));
        }
    }

    private static void Bisqued(PieceCase c, Judgement judgement)
    {
        if (c.Firing.Kind == FiringKind.Bisque)
        {
            var glazed = c.IsGlazed;
            judgement.Find(ReasonCode.AlreadyBisqued, ReasonSeverity.Review)?.Because(
                glazed ? LoadRuleIds.BisqueWithGlaze : LoadRuleIds.FiringOrder, null,
                glazed ? Message.Of("loads.glazed-among-bisque") : Message.Of("loads.second-bisque"),
                Message.Of("loads.book-glaze-firing"));
        }
        else if (c.Firing.Kind == FiringKind.Overglaze)
        {
            judgement.Find(ReasonCode.WrongOrder, ReasonSeverity.Refuse)?.Because(LoadRuleIds.OverglazeOnGlaze, null,
                Message.Of("loads.no-fired-glaze"), Message.Of("loads.glaze-first"));
        }
        else if (c.Firing.Kind == FiringKind.Single)
        {
            judgement.Find(ReasonCode.AlreadyBisqued, ReasonSeverity.Note)?.Because(LoadRuleIds.FiringOrder, null,
                Message.Of("loads.bisqued-in-single"));
        }
        else if (Late(c) is { } late)
        {
            judgement.Find(ReasonCode.WrongOrder, ReasonSeverity.Refuse)?.Because(LoadRuleIds.OverglazeOnGlaze, late.Coat,
                Message.Of("loads.coat-goes-on-fired-glaze", ("coat", late.Coat.NameFirst)), Message.Of("loads.glaze-then-decorate"));
        }
    }

    // Loops and no lambdas: suggestions ask these thousands of times.
    private static CoatOnPiece? Late(PieceCase c)
    {
        foreach (var item in c.Piece.Coats)
        {
            if (item.Coat.AppliedOn.Has(PieceState.GlazeFired)
                && (!item.Coat.IsOverglaze || item.Coat.FiredIn.Has(c.Firing.Kind))) return item;
        }

        return null;
    }

    private static CoatOnPiece? MadeForBisque(PieceCase c)
    {
        foreach (var item in c.Piece.Coats)
        {
            if (item.Coat.Melts && !item.Coat.AppliedOn.Has(PieceState.BoneDry)) return item;
        }

        return null;
    }

    private static bool HasDecoration(PieceCase c)
    {
        foreach (var item in c.Piece.Coats)
        {
            if (item.Coat.AppliedOn.Has(PieceState.GlazeFired) && item.Coat.FiredIn.Has(c.Firing.Kind)) return true;
        }

        return false;
    }

    private static void GlazeFired(PieceCase c, Judgement judgement)
    {
        if (c.Firing.Kind == FiringKind.Overglaze) return;
        if (c.Firing.Kind == FiringKind.Bisque)
        {
            judgement.Find(ReasonCode.WrongOrder, ReasonSeverity.Refuse)?.Because(LoadRuleIds.FiringOrder, null,
                Message.Of("loads.glaze-fired-in-bisque"), Message.Of("loads.book-glaze-or-overglaze"));
        }
        else if (!HasDecoration(c))
        {
            Refire(c, judgement);
        }
    }

    // What a second glaze fire does depends on what the first one was: a glaze at its cone moves again, one far below it stays.
    private static void Refire(PieceCase c, Judgement judgement)
    {
        CoatOnPiece? stays = null, gets = null, fresh = null;
        var moves = false;
        foreach (var item in c.Piece.Coats)
        {
            if (!item.Coat.Melts) continue;
            if (!item.IsFired) fresh ??= item;
            else if (!item.MeltsAt(c.Firing.Cone)) stays ??= item;
            else if (item.WasUnderfired) gets ??= item;
            else moves = true;
        }

        if (moves || (gets ?? stays) is null)
        {
            judgement.Find(ReasonCode.WrongOrder, ReasonSeverity.Review)?.Because(LoadRuleIds.Refire, null,
                Message.Of("loads.second-glaze-fire"), Message.Of("loads.refire-same-cone"));
        }
        else if (gets is not null)
        {
            judgement.Find(ReasonCode.WrongOrder, ReasonSeverity.Note)?.Because(LoadRuleIds.Refire, gets.Coat,
                Message.Of(
                    "loads.refire-to-its-cone",
                    ("coat", gets.Coat.NameFirst), ("was", gets.FiredAt!.Text), ("cone", c.Firing.Cone.Text)),
                Message.Of("loads.refire-on-cookie"));
        }
        else if (fresh is not null)
        {
            judgement.Find(ReasonCode.WrongOrder, ReasonSeverity.Note)?.Because(LoadRuleIds.Refire, fresh.Coat,
                Message.Of("loads.glaze-over-fired-glaze", ("coat", fresh.Coat.NameFirst)), Message.Of("loads.warm-the-piece"));
        }
        else
        {
            judgement.Find(ReasonCode.WrongOrder, ReasonSeverity.Note)?.Because(LoadRuleIds.Refire, stays!.Coat,
                Message.Of("loads.glaze-stays", ("range", stays.Coat.Range), ("cone", c.Firing.Cone.Text)));
        }
    }
}
