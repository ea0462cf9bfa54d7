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
    public void Judge(PieceCase c, ReasonSink into)
    {
        foreach (var item in c.Piece.Coats)
        {
            if (c.Judges(item.Coat)) Judge(c, item.Coat, into);
            else if (item.Coat.Kind == CoatKind.TerraSigillata) Sigillata(c, item.Coat, into);
        }
    }

    private static void Judge(PieceCase c, Coat coat, ReasonSink into)
    {
        var cone = c.Firing.Cone;
        if (cone.IsBelow(coat.Min)) Under(c, coat, cone.StepsTo(coat.Min), into);
        else if (coat.Max is { } max && cone.Order > max.Order) Over(c, coat, max, max.StepsTo(cone), into);
        else if (coat.Max == cone && coat.RunRisk >= RunRisk.High) AtTheTop(c, coat, into);
        else if (coat.Kind == CoatKind.TerraSigillata) Sigillata(c, coat, into);
    }

    private static void Under(PieceCase c, Coat coat, int below, ReasonSink into)
    {
        var severity = Severity(coat, below > c.Book.Figure(LoadRuleIds.GlazeBelowRange));
        into.Add(ReasonCode.GlazeUnderfired, severity, LoadRuleIds.GlazeBelowRange, coat,
            $"{coat.Capital} does not melt at cone {c.Firing.Cone}: it needs {coat.Range}, {Steps(below)} hotter at least. It comes out {Sentences.Lower(coat.Underfired)}",
            $"Fire it at {coat.Range}{Best(coat)}, on a clay that stands it.");
    }

    private static void Over(PieceCase c, Coat coat, ConeMark max, int above, ReasonSink into)
    {
        var readily = coat.RunRisk >= RunRisk.High;
        var severity = Severity(coat, readily || above > c.Book.Figure(LoadRuleIds.GlazeAboveRange));
        var runs = coat.Melts || coat.Kind == CoatKind.Vapour;
        into.Add(ReasonCode.GlazeOverfired, severity, LoadRuleIds.GlazeAboveRange, coat,
            $"{coat.Capital} is over-fired at cone {c.Firing.Cone}: it stands cone {max} at most, and {c.Firing.Cone} is {Steps(above)} above that. {coat.Overfired}{(runs ? " It runs off the foot onto the shelf." : "")}",
            $"Fire it at {coat.Range}{Best(coat)}.{(runs && severity == ReasonSeverity.Review ? Foot(c) : "")}");
    }

    private static void AtTheTop(PieceCase c, Coat coat, ReasonSink into) =>
        into.Add(ReasonCode.GlazeOverfired, ReasonSeverity.Note, LoadRuleIds.FootMargin, coat,
            $"Cone {c.Firing.Cone} is the top of the range of {coat.Name}, which runs readily there.",
            $"Keep to a cone below, or:{Foot(c)}", withinRange: true);

    private static void Sigillata(PieceCase c, Coat coat, ReasonSink into)
    {
        var rule = c.Book.Rule(LoadRuleIds.SigillataBisque);
        if (rule.ConeMax is not { } limit || c.Firing.Cone.Order <= c.Book.Marks.Of(limit).Order) return;
        into.Add(ReasonCode.GlazeOverfired, ReasonSeverity.Review, LoadRuleIds.SigillataBisque, coat,
            $"Polished {coat.Name.Replace("polished ", "", StringComparison.Ordinal)} loses its shine above cone {limit}, and this firing goes to cone {c.Firing.Cone}.",
            $"Fire it at cone {rule.ConeMin} to {limit}, apart from the normal bisque.", withinRange: true);
    }

    private static string Foot(PieceCase c)
    {
        var rule = c.Book.Rule(LoadRuleIds.FootMargin);
        return System.FormattableString.Invariant($" leave {rule.ValueMin} to {rule.ValueMax} mm of the foot free of glaze, set the piece on a cookie or catcher, and wash the shelf.");
    }

    private static ReasonSeverity Severity(Coat coat, bool far) =>
        far && coat.Kind is not (CoatKind.Underglaze or CoatKind.Slip or CoatKind.TerraSigillata) ? ReasonSeverity.Refuse : ReasonSeverity.Review;

    private static string Best(Coat coat) => coat.Best is null || coat.Min == coat.Max ? "" : $", best at {coat.Best}";

    // A half cone beyond a whole one is less than a whole step away.
    private static string Steps(int steps) => steps == 0 ? "half a cone" : BodyOverRule.Cones(steps);
}
