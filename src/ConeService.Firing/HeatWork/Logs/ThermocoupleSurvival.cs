using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>Tells of peaks that the wires of a thermocouple do not survive.</summary>
internal static class ThermocoupleSurvival
{
    /// <summary>
    /// Warns where the peak is hotter than the highest temperature for which any standard of the package states a tolerance of the type:
    /// beyond it no maker promises anything of the wire.
    /// </summary>
    public static void Warn(Dataset dataset, ThermocoupleToleranceRow tolerance, HeatHistory history, List<HeatWarning> warnings)
    {
        var highest = dataset.ThermocoupleTolerances.Where(r => r.Type == tolerance.Type).Max(r => (double?)r.HighestCelsius);
        var peak = history.Peak.Kelvin - Temperature.KelvinAtZero;
        if (highest is not { } most || peak <= most) return;
        warnings.Add(HeatWarning.Of(
            WarningCodes.ThermocoupleOverheated,
            Message.Of("logs.thermocouple-overheated", ("type", tolerance.Type), ("highest", most), ("peak", peak))));
    }
}
