namespace ConeService.Firing.Schedules.Fitting;

/// <summary>Hours, in which firings are reckoned, as the minutes in which they are told: to a tenth, 6 seconds.</summary>
internal static class FitMinutes
{
    public static double Of(double hours) => Math.Round(hours * 60, 1);

    public static double? Of(double? hours) => hours is { } h ? Of(h) : null;
}
