using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>
/// Finds firings of a length that suggests another unit of time. Common practice: a bisque or glaze firing climbs for 4 to 14 hours,
/// raku for half an hour and more, and the longest wood firings take ten days or so.
/// </summary>
internal static class FiringCheck
{
    private const double HotCelsius = 600;
    private const double ShortestClimbHours = 0.5;
    private const double LongestHours = 240;

    /// <summary>Warns of a firing that is too short or too long.</summary>
    public static void Warn(HeatHistory history, List<HeatWarning> warnings)
    {
        var climb = history.Peak.Hours - history.Start.Hours;
        var hot = history.Peak.Kelvin - Temperature.KelvinAtZero >= HotCelsius
            && history.Start.Kelvin - Temperature.KelvinAtZero < HotCelsius / 2;
        if (hot && climb < ShortestClimbHours)
        {
            warnings.Add(HeatWarning.Of(
                WarningCodes.DurationSuspect, Message.Of("logs.too-fast-a-firing", ("minutes", climb * 60))));
        }
        else if (history.DurationHours > LongestHours)
        {
            warnings.Add(HeatWarning.Of(
                WarningCodes.DurationSuspect, Message.Of("logs.too-slow-a-firing", ("hours", history.DurationHours))));
        }
    }
}
