using ConeService.Contract.Answers;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork.Logs;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.HeatWork.Forecasting;

/// <summary>A question on a firing under way, read and judged.</summary>
/// <param name="Settings">Chart, thermocouple, uncertainty.</param>
/// <param name="Cone">The cone that is to be put down.</param>
/// <param name="Log">The log so far.</param>
/// <param name="Rest">What is left of the programme, from where the log ends; null when nothing is.</param>
/// <param name="FullSpeedKelvinPerHour">What a segment without a rate does at most, K/h, where no kiln is modelled.</param>
/// <param name="Cooling">The cooling, where no kiln is modelled.</param>
/// <param name="Fahrenheit">True when temperatures are °F.</param>
/// <param name="KilnId">The caller's name for the kiln.</param>
/// <param name="Heat">What heats it; null without a kiln.</param>
/// <param name="Kiln">The kiln with its load; null where none is modelled.</param>
/// <param name="Start">When the log begins; null when not stated.</param>
/// <param name="Assumed">Parameters that were left out.</param>
internal sealed record ForecastQuestion(
    HeatSettings Settings,
    ChartCone Cone,
    CleanLog Log,
    IReadOnlyList<HeatSegment>? Rest,
    double FullSpeedKelvinPerHour,
    CoolDown Cooling,
    bool Fahrenheit,
    string? KilnId,
    KilnHeat? Heat,
    KilnSetup? Kiln,
    DateTimeOffset? Start,
    List<Assumption> Assumed)
{
    /// <summary>The last sample.</summary>
    public HeatPoint Now => Log.History.End;
}
