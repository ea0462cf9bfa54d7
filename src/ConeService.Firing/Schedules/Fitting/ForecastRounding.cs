using ConeService.Contract.Kilns;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>Digits of a forecast: as many as one may want to add up, far more than it can be trusted to.</summary>
internal static class ForecastRounding
{
    /// <summary>Energy to 0.01 kWh.</summary>
    public static KilnEnergy Rounded(this KilnEnergy e) => new(
        TotalKilowattHours: At(e.TotalKilowattHours, 2),
        ToPeakKilowattHours: At(e.ToPeakKilowattHours, 2),
        AfterPeakKilowattHours: At(e.AfterPeakKilowattHours, 2),
        WareKilowattHours: At(e.WareKilowattHours, 2),
        FurnitureKilowattHours: At(e.FurnitureKilowattHours, 2),
        WaterKilowattHours: At(e.WaterKilowattHours, 2),
        WallsKilowattHours: At(e.WallsKilowattHours, 2),
        ChamberKilowattHours: At(e.ChamberKilowattHours, 2),
        SurfaceKilowattHours: At(e.SurfaceKilowattHours, 2),
        LeakKilowattHours: At(e.LeakKilowattHours, 2),
        UnaccountedKilowattHours: At(e.UnaccountedKilowattHours, 2),
        KilowattHoursPerKilogram: At(e.KilowattHoursPerKilogram, 3));

    /// <summary>Fuel to 0.1 kWh.</summary>
    public static KilnFuel? Rounded(this KilnFuel? f) =>
        f is null ? null : new(
            At(f.LowerBoundKilowattHours, 1),
            f.Factor,
            At(f.KilowattHours, 1),
            At(f.UsualLowKilowattHours, 1),
            At(f.UsualHighKilowattHours, 1));

    /// <summary>As it is told: minutes, temperatures and rates to 0.1, kW to 0.01, counted from 1.</summary>
    public static SegmentOutcome Told(this SegmentRun s) => new(
        Segment: s.Index + 1,
        Following: s.Following,
        StartMinutes: FitMinutes.Of(s.StartHours),
        RampEndMinutes: FitMinutes.Of(s.RampEndHours),
        EndMinutes: FitMinutes.Of(s.EndHours),
        PlannedMinutes: FitMinutes.Of(s.PlannedHours),
        StartCelsius: At(s.StartCelsius, 1),
        EndCelsius: At(s.EndCelsius, 1),
        LargestLagCelsiusDifference: At(s.LargestLagKelvin, 1),
        FollowsToCelsius: At(s.FollowsToCelsius, 1),
        MeanRateCelsiusPerHour: At(s.MeanRateCelsiusPerHour, 1),
        LastRateCelsiusPerHour: At(s.LastRateCelsiusPerHour, 1),
        LargestKilowatts: At(s.LargestKilowatts, 2),
        LoadLagCelsiusDifference: At(s.LoadLagKelvin, 1));

    // Plus zero: a rounded −0.001 would be written as −0.
    private static double At(double value, int digits) => Math.Round(value, digits) + 0.0;

    private static double? At(double? value, int digits) => value is { } v ? At(v, digits) : null;
}
