using ConeService.Contract.Kilns;
using ConeService.Contract.Schedules;

namespace ConeService.Api.Features.Schedules;

/// <summary>What the sheet says of the kiln.</summary>
internal static class FitSheetKiln
{
    /// <summary>The lines; none without a kiln.</summary>
    public static IEnumerable<string> Lines(ScheduleFit fit)
    {
        if (fit.Kiln is not { } kiln) yield break;
        yield return FormattableString.Invariant($"{kiln.AvailableKilowatts:0.0} kW there")
            + (kiln.CanFollow ? "; it keeps up with every climb" : "");
        yield return kiln.Fuel is { } fuel
            ? Fuel(fuel)
            : FormattableString.Invariant($"Energy about {kiln.Energy.TotalKilowattHours:0} kWh, ± 20 %");
        if (kiln.Cost is { } cost)
        {
            yield return cost.Amount is { } amount
                ? FormattableString.Invariant($"Cost about {amount:0.00} {cost.Currency} ({cost.Low:0.00} to {cost.High:0.00})")
                : FormattableString.Invariant($"Cost {cost.Low:0.00} to {cost.High:0.00} {cost.Currency}");
        }

        if (kiln.Instead is { } instead) yield return instead.ToString();
        foreach (var remedy in kiln.Remedies) yield return remedy.Message.ToString();
    }

    private static string Fuel(KilnFuel fuel)
    {
        if (fuel.KilowattHours is { } own) return FormattableString.Invariant($"Fuel about {own:0} kWh");
        var (low, high) = (fuel.UsualLowKilowattHours, fuel.UsualHighKilowattHours);
        return FormattableString.Invariant($"Fuel at least {fuel.LowerBoundKilowattHours:0} kWh, usually {low:0} to {high:0}");
    }
}
