using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// Raku ware is drawn red hot: only open bodies stand it. A pit heats slowly and unevenly: low-fire earthenware, which is its
/// ware, stands that too.
/// </summary>
internal sealed class ThermalShockRule : IPieceRule
{
    public IReadOnlyList<string> RestsOn { get; } = [LoadRuleIds.OpenBodies];

    public void Judge(PieceCase c, Judgement judgement)
    {
        if (c.Firing.Kind is not (FiringKind.Raku or FiringKind.Pit)) return;
        if (c.Piece.Body is not { ThermalShock: ThermalShock.Dense } body) return;
        if (c.Firing.Kind == FiringKind.Pit && body.Mature is { } mature && mature.Best.IsBelow(c.Tables.PotterScale.Of("1"))) return;
        judgement.Find(ReasonCode.BodyUnderfired, ReasonSeverity.Review, withinRange: true)?.Because(LoadRuleIds.OpenBodies, body,
            Message.Of("loads.body-not-open", ("body", body.NameFirst), ("kind", c.Firing.Needs.Kind), ("firing", c.Firing.Needs.Name)),
            Message.Of("loads.open-clay"));
    }
}
