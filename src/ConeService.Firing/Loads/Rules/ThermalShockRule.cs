using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>Raku ware is drawn red hot and pit ware heats and cools unevenly: only open bodies stand it.</summary>
internal sealed class ThermalShockRule : IPieceRule
{
    public void Judge(PieceCase c, ReasonSink into)
    {
        if (c.Firing.Kind is not (FiringKind.Raku or FiringKind.Pit) || c.Piece.Body is not { ThermalShock: ThermalShock.Dense } body) return;
        into.Add(ReasonCode.BodyUnderfired, ReasonSeverity.Review, LoadRuleIds.OpenBodies, body,
            $"{body.Capital} is not made for {c.Firing.Needs.Row.Name}: it is not open enough to be heated and cooled so suddenly, and is likely to crack or burst.",
            $"Use a raku body or another open, grogged clay.");
    }
}
