using ConeService.Contract.Materials;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// A body above what it stands: the consequence grows with the whole cones over its best cone, by the body's own steps.
/// Within its range the piece is never refused. One cone above the range without bloating is for whoever fires to say;
/// anything more is refused.
/// </summary>
internal sealed class BodyOverRule : IPieceRule
{
    private const int ForReview = 1;

    public void Judge(PieceCase c, ReasonSink into)
    {
        if (c.Piece.Body is not { Mature: { } mature } body) return;
        var cone = c.Firing.Cone;
        var step = body.StepAt(cone, c.Firing.IsReduction);
        if (cone.Order <= mature.Max.Order)
        {
            WithinRange(c, body, step, into);
            return;
        }

        var above = mature.Max.StepsTo(cone);
        var severity = step >= OverfireStep.Bloats || above > ForReview ? ReasonSeverity.Refuse : ReasonSeverity.Review;
        var over = mature.Best.StepsTo(cone);
        into.Add(ReasonCode.BodyOverfired, severity, c.Firing.Kind == FiringKind.Bisque ? LoadRuleIds.SharedBisque : LoadRuleIds.BodyStandsCone, body,
            $"{body.Capital} {Consequence(body, step)} at cone {cone}: its best cone is {mature.Best}, it stands cone {mature.Max} at most, and {cone} is {Cones(over)} over its best. {Detail(body, step)}",
            $"{Instead(c, body, mature)}");
    }

    private static void WithinRange(PieceCase c, Body body, OverfireStep step, ReasonSink into)
    {
        if (step < OverfireStep.Warps || c.Firing.Kind == FiringKind.Overglaze) return;
        into.Add(ReasonCode.BodyOverfired, step >= OverfireStep.Bloats ? ReasonSeverity.Review : ReasonSeverity.Note, LoadRuleIds.BodyStandsCone, body,
            $"Cone {c.Firing.Cone} is within the range of {body.Name}, but past the cone where it {Begins(body, step)}{(c.Firing.IsReduction && body.BloatSoonerInReduction > 0 ? ", which reduction brings on sooner" : "")}. {body.Overfired}",
            $"Its best cone is {body.Mature!.Best}; hotter or in reduction keep wide and thin forms out and leave room around the piece.", withinRange: true);
    }

    private static string Consequence(Body body, OverfireStep step) => step switch
    {
        OverfireStep.Melts => "melts onto the shelf",
        OverfireStep.Slumps => "slumps and sticks to the shelf",
        OverfireStep.Bloats => "bloats and blisters",
        OverfireStep.Warps => body.FirstStep == FirstStep.Tightens ? "tightens too far" : "warps",
        _ => "is over-fired",
    };

    private static string Begins(Body body, OverfireStep step) => step switch
    {
        OverfireStep.Melts => "melts",
        OverfireStep.Slumps => "begins to slump",
        OverfireStep.Bloats => "begins to bloat",
        _ => body.FirstStep == FirstStep.Tightens ? "begins to tighten" : "begins to warp",
    };

    private static string Detail(Body body, OverfireStep step) => step switch
    {
        OverfireStep.Melts => "It runs into a puddle and takes the shelf, and what stands on it, along.",
        >= OverfireStep.Bloats when body.Shelf is { } shelf => $"{body.Overfired} On the shelf: {Sentences.Lower(shelf)}",
        _ => body.Overfired,
    };

    private static string Instead(PieceCase c, Body body, ConeRange mature) => c.Firing.Kind == FiringKind.Bisque
        ? $"Bisque it at cone {body.BisqueMin} to {body.BisqueMax}."
        : $"Fire it at {mature}, best at {mature.Best}, with a glaze for that range; for cone {c.Firing.Cone} make the piece of another clay.";

    internal static string Cones(int steps) => steps == 1 ? "1 whole cone" : $"{steps} whole cones";
}
