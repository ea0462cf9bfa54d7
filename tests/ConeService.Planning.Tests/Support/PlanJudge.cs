using System.Globalization;
using ConeService.Contract.Loads;
using ConeService.Contract.Plans;

namespace ConeService.Planning.Tests.Support;

/// <summary>Judges a plan by what stands in it and in its request, and by nothing of the planner.</summary>
internal static class PlanJudge
{
    /// <summary>What is wrong with it.</summary>
    public static IReadOnlyList<string> Faults(PlanRequest request, FiringPlan plan)
    {
        var faults = new List<string>();
        var sent = request.Pieces!.ToDictionary(p => p!.Piece!.Id.Text!, p => p!);
        foreach (var firing in plan.Firings)
        {
            if (!(firing.LoadingFrom <= firing.Start && firing.Start < firing.OpeningFrom && firing.OpeningFrom <= firing.UnloadedAt))
                faults.Add($"firing {firing.Number} is out of order");
            if (plan.Firings.Any(o => o.Number < firing.Number && o.KilnId == firing.KilnId
                && o.LoadingFrom < firing.UnloadedAt && firing.LoadingFrom < o.UnloadedAt))
            {
                faults.Add($"firing {firing.Number} overlaps another");
            }

            var kiln = request.Kilns!.First(k => k!.Kiln!.Id.Text == firing.KilnId)!.Kiln!;
            var thick = Number(kiln.Shelves!.ThicknessMillimetres.Text);
            if (firing.Layers.Sum(l => l.HeightMillimetres + thick) > Number(kiln.Interior!.HeightMillimetres.Text) - 25)
                faults.Add($"firing {firing.Number} is too high");
            if (firing.Layers.Count > Number(kiln.Shelves.Layers.Text)) faults.Add($"firing {firing.Number} has too many layers");
            foreach (var (layer, piece) in firing.Layers.SelectMany(l => l.Pieces.Select(p => (l, p))))
            {
                if (Number(sent[piece.Id].Piece!.Size!.HeightMillimetres.Text) > layer.HeightMillimetres)
                    faults.Add($"{piece.Id} does not stand on layer {layer.Number} of firing {firing.Number}");
            }
        }

        foreach (var piece in request.Pieces!) Chain(piece!, plan, faults);
        return faults;
    }

    /// <summary>A firing of it as the load check takes it.</summary>
    public static LoadRequest Load(PlanRequest request, FiringPlan plan, PlanFiring firing) => new(
        request.Kilns!.First(k => k!.Kiln!.Id.Text == firing.KilnId)!.Kiln,
        new FiringRequest(firing.FiringKind, firing.Cone, firing.Atmosphere),
        [.. firing.Layers.SelectMany(l => l.Pieces).GroupBy(p => (p.Id, p.Stage)).Select((g, i) => Before(request, plan, g.Key.Id, g.Key.Stage) with
        {
            Id = i.ToString(CultureInfo.InvariantCulture), Count = g.Sum(p => p.Count),
        })]);

    /// <summary>A firing of it to be sent back.</summary>
    public static GivenFiring Given(PlanFiring firing) => new(
        firing.KilnId, firing.Start.ToString("yyyy-MM-ddTHH:mm:sszzz", CultureInfo.InvariantCulture), firing.FiringKind, firing.Cone,
        firing.Atmosphere, null,
        [.. firing.Layers.SelectMany(l => l.Pieces).GroupBy(p => p.Id).Select(g => new GivenPieces(g.Key, g.Sum(p => p.Count)))]);

    // As it was sent; then with what each firing of it made of it, and the coats of the next.
    private static PieceRequest Before(PlanRequest request, FiringPlan plan, string id, int stage)
    {
        var sent = request.Pieces!.First(p => p!.Piece!.Id.Text == id)!;
        var piece = sent.Piece!;
        for (var n = 1; n < stage; n++)
        {
            var number = plan.Pieces.First(p => p.Id == id).Firings.First(f => f.Stage == n).Firing;
            var had = plan.Firings[number - 1];
            piece = piece with
            {
                State = had.FiringKind == "bisque" ? "bisqued" : "glaze-fired",
                Coats = [.. (piece.Coats ?? []).Select(c => c! with { State = "fired", FiredCone = had.Cone }), .. sent.Then![n - 1]!.Coats ?? []],
                EarlierFirings = [.. piece.EarlierFirings ?? [], new EarlierFiringRequest(had.FiringKind, had.Cone)],
            };
        }

        return piece;
    }

    private static void Chain(PlanPiece piece, FiringPlan plan, List<string> faults)
    {
        var id = piece.Piece!.Id.Text!;
        var outcome = plan.Pieces.First(p => p.Id == id);
        var handling = TimeSpan.FromMinutes(piece.HandlingMinutes ?? 2880);
        foreach (var stage in outcome.Firings.Select(f => f.Stage).Distinct())
        {
            var of = outcome.Firings.Where(f => f.Stage == stage).ToList();
            if (of.Sum(f => f.Count) > outcome.Count) faults.Add($"{id} is fired too often");
            foreach (var firing in of)
            {
                var load = plan.Firings[firing.Firing - 1].LoadingFrom;
                var taken = of.Where(f => plan.Firings[f.Firing - 1].LoadingFrom <= load).Sum(f => f.Count);
                var there = stage == 1 ? outcome.Count : outcome.Firings
                    .Where(f => f.Stage == stage - 1 && plan.Firings[f.Firing - 1].UnloadedAt + handling <= load).Sum(f => f.Count);
                if (taken > there) faults.Add($"{id} is loaded before it is there");
            }
        }

        var onLayers = plan.Firings.SelectMany(f => f.Layers).SelectMany(l => l.Pieces).Where(p => p.Id == id).Sum(p => p.Count);
        if (onLayers != outcome.Firings.Sum(f => f.Count)) faults.Add($"{id} stands on other layers than it is fired");
    }

    private static double Number(string? text) => double.Parse(text!, CultureInfo.InvariantCulture);
}
