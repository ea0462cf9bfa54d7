using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>Raw, bisqued, glaze-fired, overglaze: each firing takes ware that the one before has made ready.</summary>
internal sealed class OrderRule : IPieceRule
{
    public void Judge(PieceCase c, ReasonSink into)
    {
        switch (c.Piece.State)
        {
            case PieceState.BoneDry: Raw(c, into); break;
            case PieceState.Bisqued: Bisqued(c, into); break;
            case PieceState.GlazeFired: GlazeFired(c, into); break;
        }
    }

    private static void Raw(PieceCase c, ReasonSink into)
    {
        if (c.Firing.Kind == FiringKind.Overglaze)
        {
            into.Add(ReasonCode.WrongOrder, ReasonSeverity.Refuse, LoadRuleIds.NothingRawWithOverglaze, null,
                $"The piece is raw clay among overglaze: its moisture and fumes dull the lustre and colours around it, and it would not even become a bisque.", $"Bisque it first, then glaze fire it.");
        }
        else if (!c.Firing.Needs.Takes.Has(PieceState.BoneDry))
        {
            into.Add(ReasonCode.NotBisqued, ReasonSeverity.Refuse, LoadRuleIds.FiringOrder, null,
                $"The piece has not been bisqued: in {c.Firing.Needs.AName} raw clay gives off steam and gases that burst it and spoil the glazes around it.", $"Bisque it first{(c.IsGlazed ? ", or book a single firing if its glaze is made for raw clay" : "")}.");
        }
        else if (c.Firing.Kind == FiringKind.Bisque && c.IsGlazed)
        {
            into.Add(ReasonCode.NotBisqued, ReasonSeverity.Refuse, LoadRuleIds.FiringOrder, null,
                $"The piece carries glaze on raw clay: in a bisque, where ware is stacked and touches, it sticks to its neighbours.", $"Bisque it bare and glaze it afterwards, or book a single firing.");
        }
        else if (c.IsGlazed && c.Piece.Coats.FirstOrDefault(x => x.Coat.Melts && !x.Coat.AppliedOn.Has(PieceState.BoneDry)) is { } made)
        {
            into.Add(ReasonCode.NotBisqued, ReasonSeverity.Review, LoadRuleIds.RawGlaze, made.Coat,
                $"{made.Coat.Capital} goes on bisque: on raw clay a glaze that is not made for it tends to leave the pot.", $"Bisque the piece first, or use a glaze made for once firing and fire slowly.");
        }
    }

    private static void Bisqued(PieceCase c, ReasonSink into)
    {
        if (c.Firing.Kind == FiringKind.Bisque)
        {
            into.Add(ReasonCode.AlreadyBisqued, ReasonSeverity.Review, c.IsGlazed ? LoadRuleIds.BisqueWithGlaze : LoadRuleIds.FiringOrder, null,
                $"The piece has had its bisque{(c.IsGlazed ? " and carries glaze: among stacked bisque ware it may touch nothing, and both must want this very cone" : "; a second one only makes it tighter")}.", $"Book a glaze firing for it.");
        }
        else if (c.Firing.Kind == FiringKind.Overglaze)
        {
            into.Add(ReasonCode.WrongOrder, ReasonSeverity.Refuse, LoadRuleIds.OverglazeOnGlaze, null,
                $"The piece has no fired glaze: lustre, enamel and decals hold on glaze-fired ware only.", $"Glaze fire it first.");
        }
        else if (c.Firing.Kind == FiringKind.Single)
        {
            into.Add(ReasonCode.AlreadyBisqued, ReasonSeverity.Note, LoadRuleIds.FiringOrder, null,
                $"The piece is bisqued already and does not need the slow start of a single firing.", $"");
        }
        else if (c.Piece.Coats.FirstOrDefault(x => x.Coat.AppliedOn.Has(PieceState.GlazeFired) && !x.Coat.IsOverglaze) is { } late)
        {
            into.Add(ReasonCode.WrongOrder, ReasonSeverity.Refuse, LoadRuleIds.OverglazeOnGlaze, late.Coat,
                $"{late.Coat.Capital} goes on glaze that has been fired; this piece is only bisqued.", $"Glaze fire it first, then add the decoration.");
        }
    }

    private static void GlazeFired(PieceCase c, ReasonSink into)
    {
        if (c.Firing.Kind == FiringKind.Overglaze) return;
        if (c.Firing.Kind == FiringKind.Bisque)
        {
            into.Add(ReasonCode.WrongOrder, ReasonSeverity.Refuse, LoadRuleIds.FiringOrder, null,
                $"The piece is glaze fired: in a bisque its glaze may soften and stick to what it touches.", $"Book a glaze firing to fire it again, or an overglaze firing to decorate it.");
        }
        else if (!c.Piece.Coats.Any(x => x.Coat.AppliedOn.Has(PieceState.GlazeFired) && x.Coat.FiredIn.Has(c.Firing.Kind)))
        {
            into.Add(ReasonCode.WrongOrder, ReasonSeverity.Review, LoadRuleIds.Refire, null,
                $"The piece has been glaze fired: a second glaze fire melts its glaze about a cone further.", $"Whoever fires decides; set it on a cookie and keep it from the hottest place.");
        }
    }
}
