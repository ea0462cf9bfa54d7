using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Loads;

/// <summary>The fewest firings by trying every way to part the pieces, with nothing but the verdicts of the check.</summary>
internal static class BruteForce
{
    private static readonly Dictionary<string, CoatKind> Kinds = Reference.Dataset.Glazes.ToDictionary(g => g.Id, g => g.Kind);
    private static readonly string[] Heats = [.. EnumWords.All<KilnHeat>()];

    /// <summary>The fewest of the firings offered, the one booked among them, that accept all pieces, each piece in one of them.</summary>
    public static int Fewest(LoadRequest load, IReadOnlyList<PieceRequest> pieces)
    {
        var all = (1 << pieces.Count) - 1;
        var firings = load.Offered!.Select(f => new FiringRequest(f!.FiringKind, f.Cone, f.Atmosphere)).ToList();
        var accepted = firings.Select(f => Enumerable.Range(0, all + 1).Select(m => m > 0 && Accepts(f, Of(pieces, m))).ToArray()).ToList();
        // Within the kind that was booked, and only where that accepts a piece nowhere in one that it is ready for.
        var booked = load.Firing!.FiringKind.Text!;
        for (var i = 0; i < pieces.Count; i++)
        {
            var wanted = firings.Where((f, n) => f.FiringKind.Text == booked && accepted[n][1 << i]).Any()
                ? [booked]
                : ReadyFor(pieces[i]);
            for (var n = 0; n < firings.Count; n++)
            {
                if (wanted is null || wanted.Contains(firings[n].FiringKind.Text)) continue;
                for (var m = 0; m <= all; m++) accepted[n][m] &= (m >> i & 1) == 0;
            }
        }

        var fewest = new int[all + 1];
        for (var mask = 1; mask <= all; mask++)
        {
            fewest[mask] = int.MaxValue / 2;
            for (var part = mask; part > 0; part = (part - 1) & mask)
            {
                if (accepted.Exists(a => a[part])) fewest[mask] = Math.Min(fewest[mask], 1 + fewest[mask ^ part]);
            }
        }

        return fewest[all];
    }

    // Nobody salts a dry pot unasked: without anything that melts it is bisqued first, with a glaze it is fired once; what was bisqued is
    // glaze fired or, with a raku glaze, drawn hot; what was glaze fired gets its overglaze. Common practice. Null: any that accepts it.
    private static string[]? ReadyFor(PieceRequest piece)
    {
        var kinds = (piece.Coats ?? []).Select(c => Kinds.TryGetValue(c!.Glaze.Text ?? "", out var kind) ? kind : CoatKind.Glaze).ToList();
        if (kinds.Contains(CoatKind.Vapour)) return null;
        return piece.State.Text switch
        {
            "bone-dry" => kinds.TrueForAll(k => k is CoatKind.Slip or CoatKind.Underglaze or CoatKind.TerraSigillata) ? ["bisque"] : null,
            "bisqued" => kinds.Contains(CoatKind.RakuGlaze) ? ["raku"] : ["glaze"],
            _ => null,
        };
    }

    private static List<PieceRequest> Of(IReadOnlyList<PieceRequest> pieces, int mask) => [.. pieces.Where((_, i) => (mask >> i & 1) != 0)];

    private static bool Accepts(FiringRequest firing, List<PieceRequest> pieces) => Heats.Any(heat =>
        Loads.Check.Check(new LoadRequest(Loads.Kiln(heat, "14", "oxidation;neutral;reduction"), firing, pieces)).Verdict
            == Verdict.Accept);
}
