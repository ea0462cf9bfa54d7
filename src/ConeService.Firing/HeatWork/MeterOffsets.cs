using ConeService.Contract.HeatWork;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork;

/// <summary>The offset of a meter as answers tell it.</summary>
internal static class MeterOffsets
{
    /// <summary>The offset by the cones of one firing: an estimate, or the bound that they set.</summary>
    public static MeterOffset Of((double Offset, double Error)? estimate, IReadOnlyList<OffsetEvidence> evidence)
    {
        if (estimate is { } span && MeterOffsetEstimate.IsBounded(evidence)) return Between(span, evidence);
        if (estimate is { } e)
        {
            return Estimated(e, evidence.Count, Message.Of(
                "heat-work.offset", ("celsius", Math.Abs(e.Offset)), ("direction", Direction(e.Offset)), ("error", e.Error)));
        }

        var bound = MeterOffsetEstimate.Bound(evidence);
        return evidence[0].Kind == EvidenceKind.AtLeast
            ? Bounded(evidence.Count, Message.Of("heat-work.offset-at-least", ("celsius", bound)))
                with
            { AtLeastCelsiusDifference = Math.Round(bound, 2) }
            : Bounded(evidence.Count, Message.Of("heat-work.offset-at-most", ("celsius", bound)))
                with
            { AtMostCelsiusDifference = Math.Round(bound, 2) };
    }

    /// <summary>The offset by several firings together.</summary>
    /// <param name="firings">The estimate of each firing, null where its cones only bound it, and how many cones it rests on.</param>
    /// <param name="drifts">True when the offset changes from firing to firing, so that a mean means little.</param>
    public static MeterOffset Pooled(IReadOnlyList<((double Offset, double Error)? Estimate, int Cones)> firings, bool drifts)
    {
        var estimated = firings.Where(f => f.Estimate is not null).ToList();
        if (MeterOffsetEstimate.Pool([.. estimated.Select(f => f.Estimate!.Value)]) is not { } pooled)
        {
            return Bounded(0, Message.Of("heat-work.offset-unbounded"));
        }

        return Estimated(pooled, estimated.Sum(f => f.Cones), Message.Of(
            "heat-work.offset-pooled",
            ("used", estimated.Count), ("firings", firings.Count),
            ("celsius", Math.Abs(pooled.Offset)), ("direction", Direction(pooled.Offset)), ("error", pooled.Error),
            ("drifts", drifts ? "yes" : "no")));
    }

    private static MeterOffset Between((double Offset, double Error) estimate, IReadOnlyList<OffsetEvidence> evidence)
    {
        var least = evidence.Where(e => e.Kind == EvidenceKind.AtLeast).Max(e => e.Celsius);
        var most = evidence.Where(e => e.Kind == EvidenceKind.AtMost).Min(e => e.Celsius);
        return Estimated(estimate, evidence.Count, Message.Of(
            "heat-work.offset-between",
            ("least", least), ("most", most), ("celsius", estimate.Offset), ("error", estimate.Error)))
            with
        { AtLeastCelsiusDifference = Math.Round(least, 2), AtMostCelsiusDifference = Math.Round(most, 2) };
    }

    private static MeterOffset Estimated((double Offset, double Error) estimate, int cones, Message message) => new(
        CelsiusDifference: Math.Round(estimate.Offset, 2),
        StandardErrorCelsiusDifference: Math.Round(estimate.Error, 2),
        FahrenheitDifference: Math.Round(estimate.Offset * 1.8, 2),
        StandardErrorFahrenheitDifference: Math.Round(estimate.Error * 1.8, 2),
        AtLeastCelsiusDifference: null,
        AtMostCelsiusDifference: null,
        Observations: cones,
        Message: message);

    private static MeterOffset Bounded(int cones, Message message) => new(
        CelsiusDifference: null,
        StandardErrorCelsiusDifference: null,
        FahrenheitDifference: null,
        StandardErrorFahrenheitDifference: null,
        AtLeastCelsiusDifference: null,
        AtMostCelsiusDifference: null,
        Observations: cones,
        Message: message);

    private static string Direction(double offset) => offset >= 0 ? "hotter" : "cooler";
}
