using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>Raku ware is drawn red hot and pit ware heats and cools unevenly: only open bodies stand it.</summary>
internal sealed class ThermalShockRule : IPieceRule
{
    public IReadOnlyList<string> RestsOn { get; } = [LoadRuleIds.OpenBodies];

    public void Judge(PieceCase c, Judgement judgement)
    {
        if (c.Firing.Kind is not (FiringKind.Raku or FiringKind.Pit)) return;
        if (c.Piece.Body is not { ThermalShock: ThermalShock.Dense } body) return;
        judgement.Find(ReasonCode.BodyUnderfired, ReasonSeverity.Review)?.Because(LoadRuleIds.OpenBodies, body,
            Message.Of("loads.body-not-open", ("body", body.NameFirst), ("firing", c.Firing.Needs.Name)),
            Message.Of("loads.open-clay"));
    }
}
