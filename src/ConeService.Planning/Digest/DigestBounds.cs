using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Plans;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Planning.Requests;

namespace ConeService.Planning.Digest;

/// <summary>
/// How much of a request may be worked out before a plan is searched for. Each list is within its own limit; these hold their products.
/// </summary>
internal static class DigestBounds
{
    /// <summary>Of different ware in every firing of the menus.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="kilns">The kilns.</param>
    /// <exception cref="PlanRefusedException">There would be too many judgements.</exception>
    public static void Judgements(IReadOnlyList<ReadPiece> pieces, IReadOnlyList<ReadKiln> kilns)
    {
        var (wares, firings) = (pieces.DistinctBy(p => p.SortKey).Sum(p => p.Then.Count + 1L), kilns.Sum(k => k.Menu.Count));
        if (wares > PlanLimits.MostWares) Refuse(
            "/pieces", wares, Message.Of("plans.too-many-wares", ("count", wares)),
            Message.Of("plans.wares-allowed", ("most", PlanLimits.MostWares)));
        var count = wares * firings;
        if (count > PlanLimits.MostJudgements) Refuse(
            "/pieces", count,
            Message.Of("plans.too-many-judgements", ("wares", wares), ("firings", firings), ("count", count)),
            Message.Of("plans.judgements-allowed", ("most", PlanLimits.MostJudgements)));
    }

    /// <summary>Of ware that no firing accepts: what would take it is looked for among all firings that there are.</summary>
    /// <exception cref="PlanRefusedException">There is too much of it.</exception>
    public static void Refused(int count)
    {
        if (count > PlanLimits.MostRefused) Refuse(
            "/pieces", count, Message.Of("plans.too-many-refused", ("count", count)),
            Message.Of("plans.refused-allowed", ("most", PlanLimits.MostRefused)));
    }

    /// <summary>Of coats of which each spoils the next in one firing.</summary>
    /// <exception cref="PlanRefusedException">There are too many.</exception>
    public static void Spoiling(int count)
    {
        if (count > PlanLimits.MostSpoiling) Refuse(
            "/pieces", count, Message.Of("plans.too-many-spoiling", ("count", count)),
            Message.Of("plans.spoiling-allowed", ("most", PlanLimits.MostSpoiling)));
    }

    /// <summary>Of firings whose hours or energy the fit tells.</summary>
    /// <exception cref="PlanRefusedException">There are too many.</exception>
    public static void Fits(int count)
    {
        if (count > PlanLimits.MostFits) Refuse(
            "/kilns", count, Message.Of("plans.too-many-fits", ("most", PlanLimits.MostFits)),
            Message.Of("plans.fits-allowed", ("most", PlanLimits.MostFits)));
    }

    private static void Refuse(string pointer, long count, Message message, Message allowed)
    {
        var value = count.ToString(CultureInfo.InvariantCulture);
        throw new PlanRefusedException([new(
            FindingCodes.TooMuchAtOnce, pointer, value, new Finding(FindingCodes.TooMuchAtOnce, pointer, value, message, [allowed]))]);
    }
}
