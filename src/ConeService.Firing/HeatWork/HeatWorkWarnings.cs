using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>What must be known about a heat-work result, in sentences.</summary>
internal static class HeatWorkWarnings
{
    /// <summary>What holds for every answer.</summary>
    public static IReadOnlyList<Message> Notes { get; } =
        [Message.Of("heat-work.note-ramps"), Message.Of("heat-work.note-lean"), Message.Of("heat-work.note-witness")];

    /// <summary>Adds the warnings on one result.</summary>
    public static void Add(List<HeatWarning> warnings, HeatSettings settings, ScaleWork work, double? rate, double peak)
    {
        AddScale(warnings, work);
        if (OfRate(rate is { } r ? Math.Round(r, 2) : null) is { } ofRate) warnings.Add(ofRate);
        if (!ThermocoupleTolerance.Covers(settings.Tolerance, peak)) warnings.Add(BeyondRange(settings.Tolerance, peak));
        if (settings.Reduction && settings.Chart.Row.ReductionSensitive == YesNo.Yes)
        {
            warnings.Add(HeatWarning.Of(WarningCodes.ReductionNotModelled, Message.Of("heat-work.reduction-not-modelled")));
        }

        // Where nothing is down, what the first cone is like does not matter.
        var deciding = work.Reached is null ? [] : new[] { work.Reached, work.Next }.OfType<ConeWork>().ToList();
        AddCurves(warnings, settings.Chart, deciding);
        warnings.AddRange(deciding.Where(c => c.Cone.Oddity == ConeOddity.RateInsensitive)
            .Select(c => HeatWarning.Of(WarningCodes.OddCone, Message.Of("heat-work.rate-insensitive", ("cone", Name(c))))));
        warnings.AddRange(deciding.Where(c => c.Cone.Oddity == ConeOddity.RateSensitive)
            .Select(c => HeatWarning.Of(WarningCodes.OddCone, Message.Of("heat-work.rate-sensitive", ("cone", Name(c))))));
        warnings.AddRange(deciding.Where(LeansSteeply)
            .Select(c => HeatWarning.Of(
                WarningCodes.BendUncertain,
                Message.Of("heat-work.bend-uncertain", ("cone", Name(c)), ("minutes", ConeBend.MinutesAt60(c.Curve))))));
        if (deciding.Count == 2 && Tied(settings.Chart, work.Reached!.Cone, work.Next!.Cone) is { } tied)
        {
            warnings.Add(HeatWarning.Of(WarningCodes.ConesNearlyTied, tied));
        }
    }

    // Fact bend-duration-by-cone-number, to the minute: from 15 on.
    private static bool LeansSteeply(ConeWork cone) =>
        !cone.IsDown && cone.Progress > ConeBend.FirstMovement && ConeBend.MinutesAt60(cone.Curve) < 14.5;

    private static void AddScale(List<HeatWarning> warnings, ScaleWork work)
    {
        if (work.Reached is null)
        {
            warnings.Add(HeatWarning.Of(WarningCodes.NothingDown, Message.Of("heat-work.nothing-down", ("cone", Name(work.Next!)))));
        }

        if (work.Next is null)
        {
            warnings.Add(HeatWarning.Of(WarningCodes.ScaleExceeded, Message.Of("heat-work.scale-exceeded", ("cone", Name(work.Reached!)))));
        }

        if (work.OutOfOrder.Any())
        {
            warnings.Add(HeatWarning.Of(
                WarningCodes.ConesOutOfOrder, Message.Of("heat-work.out-of-order", ("cones", work.OutOfOrder.Select(Name).ToArray()))));
        }
    }

    private static HeatWarning? OfRate(double? rate) => rate switch
    {
        null => HeatWarning.Of(WarningCodes.RateUnknown, Message.Of("heat-work.rate-unknown")),
        < 5 or > 600 => HeatWarning.Of(WarningCodes.RateBeyondLimits, Message.Of("heat-work.rate-beyond-limits", ("rate", rate))),
        < 15 => HeatWarning.Of(WarningCodes.RateExtrapolated, Message.Of("heat-work.rate-slower", ("rate", rate))),
        > 150 => HeatWarning.Of(WarningCodes.RateExtrapolated, Message.Of("heat-work.rate-faster", ("rate", rate))),
        _ => null,
    };

    private static HeatWarning BeyondRange(ThermocoupleToleranceRow tolerance, double peak) => HeatWarning.Of(
        WarningCodes.ThermocoupleBeyondRange,
        Message.Of(
            "heat-work.thermocouple-beyond-range",
            ("type", tolerance.Type),
            ("class", tolerance.Class),
            ("lowest", tolerance.LowestCelsius),
            ("highest", (object?)tolerance.HighestCelsius ?? "none"),
            ("peak", peak)));

    private static void AddCurves(List<HeatWarning> warnings, ConeChart chart, List<ConeWork> deciding)
    {
        var borrowed = deciding.Where(c => c.Curve is ShiftedCurve).ToList();
        if (chart.Row.BendsLater == YesNo.Yes)
        {
            warnings.Add(HeatWarning.Of(WarningCodes.SmallCones, borrowed.Count == deciding.Count
                ? Message.Of("heat-work.small-cones-borrowed")
                : Message.Of("heat-work.small-cones")));
        }
        else if (borrowed.Count > 0)
        {
            object cones = borrowed.Count == 1
                ? Name(borrowed[0])
                : Message.Of("heat-work.both-cones", ("first", Name(borrowed[0])), ("second", Name(borrowed[1])));
            warnings.Add(HeatWarning.Of(
                WarningCodes.BorrowedCurves, Message.Of("heat-work.borrowed-curves", ("chart", chart.Id), ("cones", cones))));
        }
    }

    // All the neighbours that are tied with one another, not only the two between which the firing ended.
    private static Message? Tied(ConeChart chart, ChartCone reached, ChartCone next)
    {
        var run = chart.Cones.Reverse().SkipWhile(c => c != reached).TakeWhile(IsTied).Reverse()
            .Concat(chart.Cones.SkipWhile(c => c != next).TakeWhile(IsTied)).ToList();
        return run.Contains(reached) && run.Contains(next)
            ? Message.Of(
                "heat-work.nearly-tied",
                ("cones", run.SkipLast(1).Select(c => c.Cone.ToString()).ToArray()), ("last", run[^1].Cone.ToString()))
            : null;

        static bool IsTied(ChartCone cone) => cone.Oddity == ConeOddity.NearlyTied;
    }

    private static string Name(ConeWork work) => work.Cone.Cone.ToString();
}
