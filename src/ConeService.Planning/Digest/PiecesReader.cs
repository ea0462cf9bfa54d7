using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Contract.Problems;
using ConeService.Firing;
using ConeService.Firing.Room;
using ConeService.Planning.Requests;

namespace ConeService.Planning.Digest;

/// <summary>Reads the pieces of a request.</summary>
internal sealed class PiecesReader(FiringReference reference, RoomFactors factors, Moments moments, List<PlanFinding> findings,
    List<PlanAssumption> assumed)
{
    /// <summary>Reads them; what can't be read is a finding.</summary>
    public IReadOnlyList<ReadPiece> Read(IReadOnlyList<PlanPiece?>? sent)
    {
        if (sent is null || sent.Count > PlanLimits.MostPieces) return [];
        var read = new List<ReadPiece>();
        for (var i = 0; i < sent.Count; i++)
        {
            var at = $"/pieces/{i}";
            if (Read(sent[i], at) is { } one) read.Add(one);
        }

        CheckWare(sent);
        return read;
    }

    private ReadPiece? Read(PlanPiece? sent, string at)
    {
        var before = findings.Count;
        findings.AddRange(PlanFinding.Of(PlanPieceCheck.Of(sent, at)));
        if (sent?.Piece is not { } piece) return null;
        var count = PlanNumbers.Count(piece.Count, PlanLimits.MostPieces) ?? 1;
        var height = PlanNumbers.Millimetres(piece.Size?.HeightMillimetres ?? default);
        var width = PlanNumbers.Millimetres(piece.Size?.WidthMillimetres ?? default);
        var depth = PlanNumbers.Millimetres(piece.Size?.DepthMillimetres ?? default);
        var ready = moments.Minutes(sent.Ready, at + "/ready");
        var due = moments.Minutes(sent.Due, at + "/due");
        // A date that is past when the plan is made is kept: the piece is late already, and counts. Only one before its own ready is a
        // slip.
        if (due <= ready) findings.Add(new(FindingCodes.DueBeforeReady, at + "/due", sent.Due));
        var priority = PlanNumbers.Count(sent.Priority, PlanPieceCheck.MostPriority) ?? 1;
        var handling = PlanNumbers.Within<PlanPiece>(sent.HandlingMinutes, nameof(PlanPiece.HandlingMinutes))
            ?? factors.HandlingMinutes;
        if (sent.HandlingMinutes is null && sent.Then is { Count: > 0 }) assumed.Add(new(at + "/handlingMinutes", Moments.Text(handling)));
        var stacked = sent.BisqueStack is not { } stack ? (Stack?)null : new(
            PlanNumbers.Count(stack.Count, PlanPieceCheck.MostStacked) ?? 1,
            PlanNumbers.Within<BisqueStack>(stack.StepMillimetres, nameof(BisqueStack.StepMillimetres)) ?? 0);

        if (findings.Count > before) return null;
        return new(
            piece.Id.Text!, at, sent, Ware.Of(piece), count, new(height!.Value, width!.Value, depth), ready ?? ReadPiece.ReadyAlready, due,
            priority, (int)handling, stacked);
    }

    // What stands in body and coats, each sort once; of later coats each by themselves.
    private void CheckWare(IReadOnlyList<PlanPiece?> sent)
    {
        var wares = new Dictionary<string, (PieceRequest Piece, string Pointer)>();
        for (var i = 0; i < sent.Count; i++)
        {
            if (sent[i]?.Piece is not { } piece) continue;
            wares.TryAdd(Ware.Of(piece).Key, (piece, $"/pieces/{i}/piece"));
            for (var j = 0; j < Math.Min(sent[i]!.Then?.Count ?? 0, PlanLimits.MostThen); j++)
            {
                var later = piece with { Coats = sent[i]!.Then![j]?.Coats };
                wares.TryAdd("then " + Ware.Of(later).Key, (later, $"/pieces/{i}/then/{j}"));
            }
        }

        foreach (var chunk in wares.Values.Chunk(LoadLimits.MostPieces / 2))
        {
            try
            {
                reference.Loads.Read(new(
                    new Contract.Kilns.Kiln(Heat: "electric", MaxCone: "10"), new FiringRequest("bisque", "06", "oxidation"),
                    [.. chunk.Select((w, n) => Ware.Of(w.Piece).Named(n))]));
            }
            catch (RefusedException refused)
            {
                foreach (var found in refused.Findings) Tell(found, chunk);
            }
        }
    }

    private void Tell(Finding found, (PieceRequest Piece, string Pointer)[] chunk)
    {
        var parts = found.Field.Split('/', 4);
        if (parts.Length < 3 || !int.TryParse(parts[2], out var place))
        {
            findings.Add(new(found.Code, "/pieces", found.Value, found));
            return;
        }

        var (pointer, rest) = (chunk[place].Pointer, parts.Length > 3 ? parts[3] : "");
        if (pointer.Contains("/then/", StringComparison.Ordinal))
        {
            // The piece itself is told of where it stands.
            if (!rest.StartsWith("coats", StringComparison.Ordinal)) return;
        }

        var at = rest.Length == 0 ? pointer : $"{pointer}/{rest}";
        if (!findings.Exists(f => f.Pointer == at)) findings.Add(new(found.Code, at, found.Value, found));
    }
}

/// <summary>A piece as read.</summary>
internal sealed record ReadPiece(
    string Id, string Pointer, PlanPiece Sent, Ware Ware, int Count, PieceSize Size, int Ready, int? Due, int Priority, int Handling,
    Stack? Stack)
{
    /// <summary>Ready before anything can be loaded.</summary>
    public const int ReadyAlready = -2 * Model.Problem.Day;

    /// <summary>Sorts of equal key are accepted by the same firings.</summary>
    public string SortKey { get; } = Ware.Key + System.Text.Json.JsonSerializer.Serialize(Sent.Then);

    /// <summary>Coats of its later firings.</summary>
    public IReadOnlyList<IReadOnlyList<CoatRequest?>> Then { get; } = [.. (Sent.Then ?? []).Select(t => t?.Coats ?? [])];
}
