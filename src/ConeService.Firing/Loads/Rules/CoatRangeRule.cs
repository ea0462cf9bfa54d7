using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// A coat below its range is unmelted, above it runs or burns off. One whole cone outside is for whoever fires to say, more
/// is refused; a coat that runs readily is refused at once above its range. Colours and slips that do not melt by themselves
/// spoil nothing else, so they are never refused.
/// </summary>
internal sealed class CoatRangeRule : IPieceRule
{
    public IReadOnlyList<string> RestsOn { get; } =
    [
        LoadRuleIds.GlazeBelowRange, LoadRuleIds.GlazeAboveRange,
        LoadRuleIds.FootMargin, LoadRuleIds.Catcher, LoadRuleIds.SigillataBisque,
    ];

    public void Judge(PieceCase c, Judgement judgement)
    {
        foreach (var item in c.Piece.Coats)
        {
            if (c.Judges(item)) Judge(c, item.Coat, judgement);
            else if (item.Coat.Kind == CoatKind.TerraSigillata) Sigillata(c, item.Coat, judgement);
        }
    }

    private static void Judge(PieceCase c, Coat coat, Judgement judgement)
    {
        var cone = c.Firing.Cone;
        if (cone.IsBelow(coat.Min)) Under(c, coat, cone.StepsTo(coat.Min), judgement);
        else if (coat.Max is { } max && cone.Order > max.Order) Over(c, coat, max, max.StepsTo(cone), judgement);
        else if (coat.RunRisk >= RunRisk.High && c.Firing.Kind != FiringKind.Bisque) RunsReadily(c, coat, judgement);
        else if (coat.Kind == CoatKind.TerraSigillata) Sigillata(c, coat, judgement);
    }

    private static void Under(PieceCase c, Coat coat, int below, Judgement judgement)
    {
        var severity = Severity(coat, below > c.Tables.Figure(LoadRuleIds.GlazeBelowRange));
        judgement.Find(ReasonCode.GlazeUnderfired, severity)?.Because(LoadRuleIds.GlazeBelowRange, coat,
            Message.Of(
                "loads.coat-underfired",
                ("coat", coat.NameFirst), ("cone", c.Firing.Cone.Text), ("range", coat.Range), ("steps", below),
                ("underfired", coat.Underfired)),
            Message.Of("loads.fire-coat-hotter", ("range", coat.Range), ("best", Best(coat))));
    }

    private static void Over(PieceCase c, Coat coat, PotterCone max, int above, Judgement judgement)
    {
        var readily = coat.RunRisk >= RunRisk.High;
        var severity = Severity(coat, readily || above > c.Tables.Figure(LoadRuleIds.GlazeAboveRange));
        var runs = coat.Melts || coat.Kind == CoatKind.Vapour;
        judgement.Find(ReasonCode.GlazeOverfired, severity)?.Because(LoadRuleIds.GlazeAboveRange, coat,
            Message.Of(
                "loads.coat-overfired",
                ("coat", coat.NameFirst), ("cone", c.Firing.Cone.Text), ("max", max.Text), ("steps", above),
                ("overfired", coat.Overfired), ("runs", runs ? "yes" : "no")),
            runs && severity == ReasonSeverity.Review
                ? WithFoot(c, coat)
                : Message.Of("loads.fire-coat-at", ("range", coat.Range), ("best", Best(coat))));
    }

    private static void RunsReadily(PieceCase c, Coat coat, Judgement judgement)
    {
        var top = coat.Max == c.Firing.Cone;
        judgement.Find(ReasonCode.GlazeOverfired, ReasonSeverity.Note, withinRange: true)?.Because(
            top ? LoadRuleIds.FootMargin : LoadRuleIds.Catcher, coat,
            top
                ? Message.Of("loads.coat-at-top", ("cone", c.Firing.Cone.Text), ("coat", coat.Name))
                : Message.Of("loads.coat-runs-readily", ("coat", coat.NameFirst)),
            top ? KeepBelow(c) : FootAdvice(c));
    }

    private static void Sigillata(PieceCase c, Coat coat, Judgement judgement)
    {
        var rule = c.Tables.Rule(LoadRuleIds.SigillataBisque);
        if (rule.ConeMax is not { } limit || c.Firing.Cone.Order <= c.Tables.PotterScale.Of(limit).Order) return;
        judgement.Find(ReasonCode.GlazeOverfired, ReasonSeverity.Review, withinRange: true)?.Because(LoadRuleIds.SigillataBisque, coat,
            Message.Of(
                "loads.sigillata-loses-shine",
                ("coat", coat.Name.Replace("polished ", "", StringComparison.Ordinal)), ("limit", limit), ("cone", c.Firing.Cone.Text)),
            Message.Of("loads.fire-sigillata-apart", ("min", rule.ConeMin), ("max", limit)));
    }

    private static Message WithFoot(PieceCase c, Coat coat)
    {
        var rule = c.Tables.Rule(LoadRuleIds.FootMargin);
        return Message.Of(
            "loads.fire-coat-at-with-foot",
            ("range", coat.Range), ("best", Best(coat)), ("from", rule.ValueMin), ("to", rule.ValueMax));
    }

    private static Message FootAdvice(PieceCase c)
    {
        var rule = c.Tables.Rule(LoadRuleIds.FootMargin);
        return Message.Of("loads.foot-catcher-and-wash", ("from", rule.ValueMin), ("to", rule.ValueMax));
    }

    private static Message KeepBelow(PieceCase c)
    {
        var rule = c.Tables.Rule(LoadRuleIds.FootMargin);
        return Message.Of("loads.cone-below-or-foot", ("from", rule.ValueMin), ("to", rule.ValueMax));
    }

    private static ReasonSeverity Severity(Coat coat, bool far) =>
        far && coat.Kind is not (CoatKind.Underglaze or CoatKind.Slip or CoatKind.TerraSigillata)
            ? ReasonSeverity.Refuse
            : ReasonSeverity.Review;

    // Where the range is a single cone, or the body decides, there is no best to name.
    private static string Best(Coat coat) => coat.Best is null || coat.Min == coat.Max ? "none" : coat.Best.Text;
}
