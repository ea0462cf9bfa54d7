using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// Marks of the caller's own that can hardly be right: what they say is asked before anything is judged by them. Load rule
/// suspect-the-zero-first.
/// </summary>
internal sealed class MarksRule : IPieceRule
{
    private const int Widest = 6;

    // From here on up bodies that mature in their bisque, as bone china does, are usual.
    private const string HighBisque = "8";

    public IReadOnlyList<string> RestsOn { get; } = [LoadRuleIds.SuspectTheZero];

    public void Judge(PieceCase c, Judgement judgement)
    {
        if (c.Piece.Body is { Id: null } body) Body(c, body, judgement);
        foreach (var item in c.Piece.Coats)
        {
            if (item.Coat is { Id: null, Max: { } max } && Question(item.Coat.Name, item.Coat.Min, max) is { } question)
                Ask(item.Coat, question, ReasonSeverity.Review, judgement);
        }
    }

    /// <summary>True when a mark is in question, so that nothing is to be concluded from what does not fit it.</summary>
    internal static bool Questions(PieceCase c)
    {
        if (c.Piece.Body is { Id: null } body
            && ((body.Mature is { } mature && IsOdd(mature.Min, mature.Max))
                || (c.Firing.Kind == FiringKind.Bisque && (IsOdd(body.BisqueMin, body.BisqueMax) && !IsHighBisque(body)))
                || (c.Firing.Kind == FiringKind.Bisque && BisqueMatures(c.Tables, body)))) return true;
        foreach (var item in c.Piece.Coats)
        {
            if (item.Coat is { Id: null, Max: { } max } && IsOdd(item.Coat.Min, max)) return true;
        }

        return false;
    }

    private static void Body(PieceCase c, Body body, Judgement judgement)
    {
        // The bisque of ware that has had it is past asking.
        var ofBisque = c.Firing.Kind == FiringKind.Bisque ? ReasonSeverity.Review : ReasonSeverity.Note;
        if (body.Mature is { } mature && Question(body.Name, mature.Min, mature.Max) is { } range)
            Ask(body, range, ReasonSeverity.Review, judgement);
        if (IsHighBisque(body)) return;
        if (Question(body.Name, body.BisqueMin, body.BisqueMax) is { } bisque) Ask(body, bisque, ofBisque, judgement);
        else if (BisqueMatures(c.Tables, body) && Lost(body) is (var from, var to))
        {
            Ask(
                body,
                Message.Of(
                    "loads.mark-bisque-matures",
                    ("name", body.Name), ("min", body.BisqueMin.Text), ("max", body.BisqueMax.Text), ("from", from.Text), ("to", to.Text)),
                ofBisque, judgement);
        }
    }

    private static void Ask(Material marked, Message question, ReasonSeverity severity, Judgement judgement) =>
        judgement.Find(ReasonCode.ConeZeroMixUp, severity)?.Because(
            LoadRuleIds.SuspectTheZero, marked, question, Message.Of("loads.check-the-mark"));

    private static Message? Question(string name, PotterCone min, PotterCone max)
    {
        if (min.StepsTo(max) > Widest && !Straddles(min, max))
        {
            return Message.Of(
                "loads.mark-too-wide", ("name", name), ("min", min.Text), ("max", max.Text), ("steps", min.StepsTo(max)));
        }

        return Straddles(min, max)
            ? Message.Of("loads.mark-straddles-zero", ("name", name), ("min", min.Text), ("max", max.Text))
            : null;
    }

    private static bool IsOdd(PotterCone min, PotterCone max) => min.StepsTo(max) > Widest || Straddles(min, max);

    private static bool Straddles(PotterCone min, PotterCone max) => HasZero(min) && !HasZero(max);

    private static bool HasZero(PotterCone cone) => cone.Text[0] == '0';

    // Its bisque reaches up to where its maturity ends: it is meant to mature it, as with white earthenware.
    private static bool IsHighBisque(Body body) =>
        body.Mature is { } mature && HasZero(mature.Min) && body.BisqueMax.Order >= mature.Best.Order;

    private static bool BisqueMatures(LoadTables tables, Body body)
    {
        if (body.Mature is not { } mature || HasZero(mature.Min) || body.BisqueMax.IsBelow(mature.Min)) return false;
        // Bone china and its like have their high fire first.
        return !(mature.Min.Order >= tables.PotterScale.Of(HighBisque).Order && body.BisqueMax.Order >= mature.Max.Order);
    }

    private static (PotterCone From, PotterCone To)? Lost(Body body) =>
        body is { BisqueMin.MixUp: { } a, BisqueMax.MixUp: { } b } ? (a.Order <= b.Order ? (a, b) : (b, a)) : null;
}
