using ConeService.Contract.Materials;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// A body above what it stands: the consequence grows with the whole cones over its best cone, by the body's own steps.
/// Within its range the piece is never refused, and bloating is a word of warning unless reduction brings it on. One cone
/// above the range without bloating is for whoever fires to say;
/// anything more is refused.
/// </summary>
internal sealed class BodyOverRule : IPieceRule
{
    private const int ForReview = 1;

    public IReadOnlyList<string> RestsOn { get; } = [LoadRuleIds.SharedBisque, LoadRuleIds.BodyStandsCone];

    public void Judge(PieceCase c, Judgement judgement)
    {
        if (c.Piece.Body is not { Mature: { } mature } body) return;
        var cone = c.Firing.Cone;
        var step = body.StepAt(cone, c.Firing.IsReduction);
        if (cone.Order <= mature.Max.Order)
        {
            WithinRange(c, body, step, judgement);
            return;
        }

        var above = mature.Max.StepsTo(cone);
        var severity = step >= OverfireStep.Bloats || above > ForReview ? ReasonSeverity.Refuse : ReasonSeverity.Review;
        judgement.Find(ReasonCode.BodyOverfired, severity)?.Because(
            c.Firing.Kind == FiringKind.Bisque ? LoadRuleIds.SharedBisque : LoadRuleIds.BodyStandsCone, body,
            Above(cone, body, mature, step),
            c.Firing.Kind == FiringKind.Bisque
                ? BisqueRangeRule.BisqueAt(body)
                : Message.Of(
                    "loads.fire-body-at", ("range", mature.Spoken), ("best", mature.Best.Text), ("cone", cone.Text)));
    }

    private static Message Above(PotterCone cone, Body body, ConeRange mature, OverfireStep step)
    {
        var over = mature.Best.StepsTo(cone);
        return step switch
        {
            OverfireStep.Melts => Message.Of(
                "loads.body-melts",
                ("body", body.NameFirst), ("cone", cone.Text), ("best", mature.Best.Text), ("max", mature.Max.Text), ("over", over)),
            >= OverfireStep.Bloats when body.Shelf is not null => Message.Of(
                "loads.body-overfired-on-shelf",
                ("body", body.NameFirst), ("step", Step(body, step)), ("cone", cone.Text), ("best", mature.Best.Text),
                ("max", mature.Max.Text), ("over", over), ("overfired", body.Overfired), ("shelf", body.Shelf)),
            _ => Message.Of(
                "loads.body-overfired",
                ("body", body.NameFirst), ("step", Step(body, step)), ("cone", cone.Text), ("best", mature.Best.Text),
                ("max", mature.Max.Text), ("over", over), ("overfired", body.Overfired)),
        };
    }

    private static void WithinRange(PieceCase c, Body body, OverfireStep step, Judgement judgement)
    {
        if (step < OverfireStep.Warps || c.Firing.Kind == FiringKind.Overglaze) return;
        var sooner = c.Firing.IsReduction && body.BloatSoonerInReduction > 0;
        var severity = step > OverfireStep.Bloats || (step == OverfireStep.Bloats && sooner) ? ReasonSeverity.Review : ReasonSeverity.Note;
        judgement.Find(ReasonCode.BodyOverfired, severity, withinRange: true)?.Because(LoadRuleIds.BodyStandsCone, body,
            sooner
                ? Message.Of(
                    "loads.body-past-a-step-in-reduction",
                    ("cone", c.Firing.Cone.Text), ("body", body.Name), ("step", Step(body, step)), ("overfired", body.Overfired))
                : Message.Of(
                    "loads.body-past-a-step",
                    ("cone", c.Firing.Cone.Text), ("body", body.Name), ("step", Step(body, step)), ("overfired", body.Overfired)),
            Message.Of("loads.body-best-cone", ("best", body.Mature!.Best.Text)));
    }

    // The words by which sentences choose what the body does.
    private static string Step(Body body, OverfireStep step) => step switch
    {
        OverfireStep.Warps when body.FirstStep == FirstStep.Tightens => "tightens",
        _ => EnumWords.Word(step),
    };
}
