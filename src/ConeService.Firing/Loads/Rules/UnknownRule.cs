using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>What nobody knows cannot be judged; the rest of the piece still is.</summary>
internal sealed class UnknownRule : IPieceRule
{
    public void Judge(PieceCase c, ReasonSink into)
    {
        foreach (var unknown in c.Piece.Unknown)
        {
            var body = unknown.What == "The body";
            if (unknown.What == "The base clay")
            {
                into.Add(ReasonCode.UnknownMaterial, ReasonSeverity.Review, LoadRuleIds.KnownMaterials, c.Piece.Body,
                    $"{c.Piece.Body!.Capital} has the cones of its base clay, which is not named.", $"Name that clay as the body, or send ownBody with its cones.");
                continue;
            }

            into.Add(ReasonCode.UnknownMaterial, ReasonSeverity.Review, LoadRuleIds.KnownMaterials, null,
                $"{unknown.What} “{unknown.Sent}” is not known, so nobody can say what it does at cone {c.Firing.Cone}.{(unknown.Near.Count > 0 ? $" Near it: {string.Join(", ", unknown.Near)}." : "")}",
                $"{(body ? "Choose one from /v1/clay-bodies, or send ownBody with name, bisqueMin, bisqueMax, matureMin, matureBest and matureMax." : "Choose one from /v1/glazes, or send ownGlaze with name, coneMin, coneBest, coneMax and atmospheres.")}");
        }
    }
}
