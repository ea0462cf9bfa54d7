using ConeService.Contract.HeatWork;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork.Logs;

namespace ConeService.Firing.HeatWork;

/// <summary>What must be known about a heat-work result, in sentences.</summary>
internal static class HeatWorkWarnings
{
    /// <summary>What holds for every answer.</summary>
    public static IReadOnlyList<string> Notes { get; } =
    [
        "Holds and cooling are predictions from ramps: no measured hold, cooling or sub-15 °C/h data exist.",
        "The lean of a cone is good to about 4 °C of firing: real cones are slower at first and quicker near the end.",
        "The thermocouple is not the cone. Let a witness cone beside the ware decide, and compare it with this answer at POST /v1/heat-work/compare.",
    ];

    /// <summary>Adds the warnings on one result.</summary>
    public static void Add(List<HeatWarning> warnings, HeatSettings settings, ScaleWork work, double? rate, double peak)
    {
        if (work.Reached is null) Of("nothing-down", $"No cone of the chart is down; the first is {work.Next!.Cone.Cone}.");
        if (work.Next is null) Of("scale-exceeded", $"Every cone of the chart is down; how far past {work.Reached!.Cone.Cone} it went is in its margin.");
        if (work.OutOfOrder.Any()) Of("cones-out-of-order", $"Down although a cooler cone is not: {string.Join(", ", work.OutOfOrder.Select(c => c.Cone.Cone))}. Neighbouring curves cross at such rates.");
        AddRate(warnings, rate is { } r ? Math.Round(r, 2) : null);
        if (!ThermocoupleTolerance.Covers(settings.Tolerance, peak))
        {
            Of("thermocouple-beyond-range", FormattableString.Invariant($"The standard states the tolerance of type {settings.Tolerance.Type}, class {settings.Tolerance.Class}, from {settings.Tolerance.LowestCelsius} to {settings.Tolerance.HighestCelsius?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "an end not seen"} °C; at {peak:0} °C its formula was carried on, and the wire ages quickly."));
        }

        // Where nothing is down, what the first cone is like does not matter.
        var deciding = work.Reached is null ? [] : new[] { work.Reached, work.Next }.OfType<ConeWork>().ToList();
        if (settings.Reduction && settings.Chart.Row.ReductionSensitive == YesNo.Yes)
        {
            Of("reduction-not-modelled", "In reduction the iron-bearing cones 010 to 3 go down earlier than any chart says; sulphur moves them too. This is not modelled: use iron-free cones there, or judge by the ware.");
        }

        var borrowed = deciding.Where(c => c.Curve is ShiftedCurve).ToList();
        if (settings.Chart.Row.BendsLater == YesNo.Yes)
        {
            Of("small-cones", "Small cones bend later than large or self-supporting ones of the same number, and depend on how they are set"
                + (borrowed.Count == deciding.Count ? "; their curves are borrowed from the self-supporting chart." : "."));
        }
        else if (borrowed.Count > 0)
        {
            Of("borrowed-curves", $"Chart {settings.Chart.Id} has no kinetics for {string.Join(" and ", borrowed.Select(c => c.Cone.Cone))}: "
                + "the curve of the self-supporting cone was moved through the printed value.");
        }

        Odd(ConeOddity.RateInsensitive, "moves less with the rate than its neighbours in the chart, so a hold or a slow end counts for more than it should");
        Odd(ConeOddity.RateSensitive, "moves more with the rate than its neighbours in the chart, so a hold or a slow end counts for less than it should");
        if (deciding.Count == 2 && Tied(settings.Chart, work.Reached!.Cone, work.Next!.Cone) is { } tied)
            Of("cones-nearly-tied", $"Cones {tied} are nearly tied at slow rates; the fraction between them means little.");

        void Of(string code, string message) => warnings.Add(HeatWarning.Of(code, message));

        void Odd(ConeOddity oddity, string what)
        {
            foreach (var cone in deciding.Where(c => c.Cone.Oddity == oddity)) Of("odd-cone", $"Cone {cone.Cone.Cone} {what}.");
        }
    }

    // All the neighbours that are tied with one another, not only the two between which the firing ended.
    private static string? Tied(ConeChart chart, ChartCone reached, ChartCone next)
    {
        var run = chart.Cones.Reverse().SkipWhile(c => c != reached).TakeWhile(IsTied).Reverse()
            .Concat(chart.Cones.SkipWhile(c => c != next).TakeWhile(IsTied)).ToList();
        return run.Contains(reached) && run.Contains(next)
            ? $"{string.Join(", ", run.SkipLast(1).Select(c => c.Cone))} and {run[^1].Cone}"
            : null;

        static bool IsTied(ChartCone cone) => cone.Oddity == ConeOddity.NearlyTied;
    }

    private static void AddRate(List<HeatWarning> warnings, double? rate)
    {
        var (code, text) = rate switch
        {
            null => ("rate-unknown", "The history does not climb by 100 °C to its peak, so no rate could be read; the chart's usual rate decides how sure the curves are."),
            < 5 or > 600 => ("rate-beyond-limits", FormattableString.Invariant($"The last 100 °C went at {rate:0.#} °C/h: nothing supports a curve beyond 5 to 600 °C/h.")),
            < 15 => ("rate-extrapolated", FormattableString.Invariant($"The last 100 °C went at {rate:0.#} °C/h, slower than any chart prints; σ is widened.")),
            > 150 => ("rate-extrapolated", FormattableString.Invariant($"The last 100 °C went at {rate:0.#} °C/h, faster than the chart prints; σ is widened. At such rates gradients in the kiln and the lag of the thermocouple weigh more than the cone.")),
            _ => ("", ""),
        };
        if (code.Length > 0) warnings.Add(HeatWarning.Of(code, text));
    }
}
