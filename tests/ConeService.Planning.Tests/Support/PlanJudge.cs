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
            SlowEnough(firing, request.Kilns!.First(k => k!.Kiln!.Id.Text == firing.KilnId)!, sent, faults);
            if (kiln.Shelves is null) continue;
            var thick = Number(kiln.Shelves.ThicknessMillimetres.Text);
            if (firing.Layers.Sum(l => l.HeightMillimetres + thick) > Number(kiln.Interior!.HeightMillimetres.Text) - 25)
                faults.Add($"firing {firing.Number} is too high");
            if (firing.Layers.Count > Number(kiln.Shelves.Layers.Text)) faults.Add($"firing {firing.Number} has too many layers");
            if (!firing.IsPinned && firing.FiringKind != "bisque") StandBeside(firing, kiln, sent, faults);
            foreach (var (layer, piece) in firing.Layers.SelectMany(l => l.Pieces.Select(p => (l, p))))
            {
                if (Number(sent[piece.Id].Piece!.Size!.HeightMillimetres.Text) > layer.HeightMillimetres)
                    faults.Add($"{piece.Id} does not stand on layer {layer.Number} of firing {firing.Number}");
            }
        }

        foreach (var piece in request.Pieces!) Chain(piece!, plan, faults);
        return faults;
    }

    // Hours that nobody sent are no fewer than those that the fit takes for the thickest in it.
    private static void SlowEnough(PlanFiring firing, PlanKiln kiln, Dictionary<string, PlanPiece> sent, List<string> faults)
    {
        var entry = kiln.Firings!.First(f => f!.FiringKind.Text == firing.FiringKind && f.Cone.Text == firing.Cone
            && f.Atmosphere.Text == firing.Atmosphere)!;
        var walls = firing.Layers.SelectMany(l => l.Pieces).Select(p => sent[p.Id].Piece!.ThickestMillimetres)
            .Where(w => !w.IsAbsent).Select(w => Number(w.Text)).ToList();
        if (entry.Minutes is not null || firing.Schedule is null || walls.Count == 0) return;
        var takes = Studio.Reference.Schedules.Fit(firing.Schedule, new Contract.Schedules.FitRequest(
            firing.Cone, Units: "C", Kiln: kiln.Kiln! with { Shelves = null },
            Load: new(ThickestMillimetres: walls.Max()))).Answer.Times.OpeningMinutes!.Value;
        if ((firing.OpeningFrom - firing.Start).TotalMinutes < takes)
            faults.Add($"firing {firing.Number} is opened before {takes:0} min, which a wall of {walls.Max()} mm takes");
    }

    // Glazed ware stands apart and nothing on it: on a shelf discs cover no more than hexagonally packed ones do, 0.907 of it, and no two
    // stand there of which each is wider than half of it.
    private static void StandBeside(
        PlanFiring firing, Contract.Kilns.Kiln kiln, Dictionary<string, PlanPiece> sent, List<string> faults)
    {
        var shelves = kiln.Shelves!;
        var round = shelves.DiameterMillimetres.IsAbsent ? 0 : Number(shelves.DiameterMillimetres.Text);
        var beside = shelves.PerLayer.IsAbsent ? 1 : Number(shelves.PerLayer.Text);
        var area = beside * (round > 0
            ? Math.PI / 4 * round * round
            : Number(shelves.WidthMillimetres.Text) * Number(
            (shelves.DepthMillimetres.IsAbsent ? shelves.WidthMillimetres : shelves.DepthMillimetres).Text));
        foreach (var layer in firing.Layers)
        {
            var discs = layer.Pieces.Select(p => (p.Count, Size: sent[p.Id].Piece!.Size!)).ToList();
            var covered = discs.Sum(d => d.Count * (d.Size.DepthMillimetres.IsAbsent
                ? Math.PI / 4 * Math.Pow(Number(d.Size.WidthMillimetres.Text), 2)
                : Number(d.Size.WidthMillimetres.Text) * Number(d.Size.DepthMillimetres.Text)));
            if (covered > 0.907 * area) faults.Add($"layer {layer.Number} of firing {firing.Number} is covered by more than goes");
            var wide = discs.Where(d => d.Size.DepthMillimetres.IsAbsent && 2 * Number(d.Size.WidthMillimetres.Text) > round)
                .Sum(d => d.Count);
            if (round > 0 && wide > beside) faults.Add(
                $"layer {layer.Number} of firing {firing.Number} holds {wide} pieces wider than half a shelf");
        }
    }

    /// <summary>A firing of it as the load check takes it.</summary>
    public static LoadRequest Load(PlanRequest request, FiringPlan plan, PlanFiring firing) => new(
        request.Kilns!.First(k => k!.Kiln!.Id.Text == firing.KilnId)!.Kiln,
        new FiringRequest(firing.FiringKind, firing.Cone, firing.Atmosphere),
        [.. firing.Layers.SelectMany(l => l.Pieces).GroupBy(p => (p.Id, p.Stage))
            .Select((g, i) => Before(request, plan, g.Key.Id, g.Key.Stage) with
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
                Coats = [.. (piece.Coats ?? []).Select(c => c! with { State = "fired", FiredCone = had.Cone }), .. sent.Then![n - 1]!.Coats
                    ?? []],
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
