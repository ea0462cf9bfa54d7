namespace ConeService.Contract.Kilns;

/// <summary>
/// Heat that the chamber was given, kWh, and where it was when the chamber was hottest. The parts add up to <see
/// cref="ToPeakKilowattHours"/>.
/// </summary>
/// <param name="TotalKilowattHours">All heat given in the firing; of an electric kiln what the meter shows.</param>
/// <param name="ToPeakKilowattHours">Given until the chamber was last at its highest.</param>
/// <param name="AfterPeakKilowattHours">Given afterwards, for controlled cooling and holds on the way down.</param>
/// <param name="WareKilowattHours">Sensible heat in the ware.</param>
/// <param name="FurnitureKilowattHours">In shelves and posts.</param>
/// <param name="WaterKilowattHours">For evaporating free water and driving off the water bound in the clay.</param>
/// <param name="WallsKilowattHours">In the wall.</param>
/// <param name="ChamberKilowattHours">In elements, air and the skin of the wall.</param>
/// <param name="SurfaceKilowattHours">Lost to the room from the outer surface.</param>
/// <param name="LeakKilowattHours">Lost with air.</param>
/// <param name="UnaccountedKilowattHours">Given over the whole prediction and found neither stored nor lost: the error of the
/// solver.</param>
/// <param name="KilowattHoursPerKilogram">Specific firing energy: total less the drying of free water, per kg of fired ware, kWh/kg; null
/// without ware. Formula: practical-action-brick-energy.</param>
public sealed record KilnEnergy(
    double TotalKilowattHours,
    double ToPeakKilowattHours,
    double AfterPeakKilowattHours,
    double WareKilowattHours,
    double FurnitureKilowattHours,
    double WaterKilowattHours,
    double WallsKilowattHours,
    double ChamberKilowattHours,
    double SurfaceKilowattHours,
    double LeakKilowattHours,
    double UnaccountedKilowattHours,
    double? KilowattHoursPerKilogram);

/// <summary>Fuel of a gas kiln, kWh of net heating value.</summary>
/// <param name="LowerBoundKilowattHours">What perfect burning without excess air would need, with the flue at the chamber's temperature; no
/// kiln does as well.</param>
/// <param name="Factor">The kiln's own factor; null when not stated.</param>
/// <param name="KilowattHours">Lower bound × factor; null without a factor.</param>
/// <param name="UsualLowKilowattHours">Lower bound × the low end of the usual factors.</param>
/// <param name="UsualHighKilowattHours">Lower bound × the high end.</param>
public sealed record KilnFuel(
    double LowerBoundKilowattHours,
    double? Factor,
    double? KilowattHours,
    double UsualLowKilowattHours,
    double UsualHighKilowattHours);
