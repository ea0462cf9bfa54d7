using ConeService.Contract.Answers;

namespace ConeService.Contract.Plans;

/// <summary>What must hold of a piece that is planned for. Its clay, its coats and its state are judged by the load check.</summary>
internal static class PlanPieceCheck
{
    /// <summary>The highest priority.</summary>
    public const int MostPriority = 9;

    /// <summary>Most pieces stacked in or on each other.</summary>
    public const int MostStacked = 50;

    /// <summary>What is wrong with a piece.</summary>
    /// <param name="sent">The piece.</param>
    /// <param name="at">Its pointer.</param>
    public static IReadOnlyList<Finding> Of(PlanPiece? sent, string at)
    {
        var found = new PlanFound();
        if (sent?.Piece is not { } piece)
        {
            found.Missing(at + "/piece");
            return found.Findings;
        }

        if (piece.Id.IsAbsent || piece.Id.Kind != SentKind.Text) found.Missing(at + "/piece/id", piece.Id.Text);
        found.Count(piece.Count, PlanLimits.MostPieces, at + "/piece/count");
        found.Millimetres(piece.Size?.HeightMillimetres ?? default, at + "/piece/size/heightMillimetres");
        found.Millimetres(piece.Size?.WidthMillimetres ?? default, at + "/piece/size/widthMillimetres");
        found.Millimetres(piece.Size?.DepthMillimetres ?? default, at + "/piece/size/depthMillimetres");
        if (found.Findings.Count == 0 && piece.Size is not { HeightMillimetres.IsAbsent: false, WidthMillimetres.IsAbsent: false })
            found.Missing(at + "/piece/size");
        found.Count(sent.Priority, MostPriority, at + "/priority");
        found.Within<PlanPiece>(sent.HandlingMinutes, nameof(PlanPiece.HandlingMinutes), at + "/handlingMinutes");
        found.AtMost(sent.Then?.Count, PlanLimits.MostThen, at + "/then");
        if (sent.BisqueStack is { } stack) Stack(stack, at + "/bisqueStack", found);
        return found.Findings;
    }

    private static void Stack(BisqueStack sent, string at, PlanFound found)
    {
        if (sent.Count.IsAbsent) found.Missing(at + "/count");
        if (sent.StepMillimetres is null) found.Missing(at + "/stepMillimetres");
        found.Count(sent.Count, MostStacked, at + "/count");
        found.Within<BisqueStack>(sent.StepMillimetres, nameof(BisqueStack.StepMillimetres), at + "/stepMillimetres");
    }
}
