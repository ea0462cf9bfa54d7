using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;
using ConeService.Contract.Plans;

namespace ConeService.Planning.Digest;

/// <summary>Says what a firing of a menu takes and costs with ware of some dampness and thickness in it.</summary>
/// <param name="schedules">The fit.</param>
/// <param name="basis">What a firing costs.</param>
/// <param name="objective">The price of energy.</param>
internal sealed class ProgrammeMaker(UsualSchedules schedules, CostBasis basis, PlanObjective objective)
{
    /// <summary>Whether hours or energy of a firing are those of the fit.</summary>
    public bool IsFitted(MenuFiring firing) => firing.Minutes is null || (basis == CostBasis.Energy
        && PlanNumbers.Within<MenuFiring>(firing.KilowattHours, nameof(MenuFiring.KilowattHours)) is null);

    /// <summary>The firing; null where its hours are not known, with what the fit said.</summary>
    /// <param name="kiln">The kiln.</param>
    /// <param name="firing">The firing, of which numbers within their range are taken as sent.</param>
    /// <param name="entry">Its place in the menu.</param>
    /// <param name="ware">The dampest and the thickest in it.</param>
    public (DigestedFiring? Firing, Finding? Cause) Make(Kiln kiln, MenuFiring firing, int entry, SlowWare ware)
    {
        var sent = PlanNumbers.Within<MenuFiring>(firing.Minutes, nameof(MenuFiring.Minutes));
        var energy = PlanNumbers.Within<MenuFiring>(firing.KilowattHours, nameof(MenuFiring.KilowattHours));
        var (schedule, minutes) = (firing.Schedule, (int)Math.Ceiling(sent ?? 0));
        if (IsFitted(firing))
        {
            var (fitted, cause) = schedules.Of(kiln, firing, ware);
            DigestBounds.Fits(schedules.Fits);
            if (fitted is not { Minutes: { } hours }) return (null, cause);
            schedule = fitted.Schedule;
            if (firing.Minutes is null) minutes = hours;
            energy ??= fitted.KilowattHours;
        }

        var cost = basis == CostBasis.Firings ? 1 : (energy ?? 0) * (objective.Tariff?.PerKilowattHour ?? 1);
        return (new(entry, firing, ware, new(schedule, minutes, energy), (long)Math.Round(100 * cost)), null);
    }
}
