using ConeService.Contract.Texts;

namespace ConeService.Contract.HeatWork;

/// <summary>
/// How the offset of a meter changes from firing to firing: weighted least squares of true minus meter against the number of the firing.
/// </summary>
/// <param name="ChangeCelsiusDifference">Change from one firing to the next, °C.</param>
/// <param name="ChangeStandardErrorCelsiusDifference">Its standard error, °C.</param>
/// <param name="FirstCelsiusDifference">The line at the first firing, °C.</param>
/// <param name="FirstStandardErrorCelsiusDifference">Its standard error, °C.</param>
/// <param name="LatestCelsiusDifference">The line at the latest firing that gives an estimate, °C.</param>
/// <param name="LatestStandardErrorCelsiusDifference">Its standard error, °C.</param>
/// <param name="LatestFiring">Number of that firing, from 1.</param>
/// <param name="Chance">Chance of a change so large or larger were there none: a t-test, two-sided.</param>
/// <param name="Drifts">True when that is less than one in twenty.</param>
/// <param name="Firings">How many firings gave an estimate.</param>
/// <param name="Message">The trend in words.</param>
/// <param name="Suggests">What a drift suggests; null without one.</param>
public sealed record MeterTrend(
    double ChangeCelsiusDifference,
    double ChangeStandardErrorCelsiusDifference,
    double FirstCelsiusDifference,
    double FirstStandardErrorCelsiusDifference,
    double LatestCelsiusDifference,
    double LatestStandardErrorCelsiusDifference,
    int LatestFiring,
    double Chance,
    bool Drifts,
    int Firings,
    Message Message,
    Message? Suggests);
