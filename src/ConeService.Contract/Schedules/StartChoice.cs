using ConeService.Contract.Texts;

namespace ConeService.Contract.Schedules;

/// <summary>The start that was chosen, and why that one.</summary>
/// <param name="Start">The start, a whole minute.</param>
/// <param name="NotBefore">The earliest that was allowed.</param>
/// <param name="Latest">The latest that was looked at: by finishBy and peakBetween, else a day after the earliest, or a week where
/// periods of the tariff name days.</param>
/// <param name="Why">Why that one, in words.</param>
/// <param name="Saving">What it saves against the earliest start; null without a tariff or a kiln.</param>
public sealed record StartChoice(
    DateTimeOffset Start, DateTimeOffset NotBefore, DateTimeOffset Latest, Message Why, StartSaving? Saving);

/// <summary>What a start saves against starting at once. The amounts rest on the predicted power and share its ±20 %.</summary>
/// <param name="AmountAtOnce">What the firing costs when it starts at the earliest; for gas without a factor of your own null.</param>
/// <param name="Amount">What it costs with the start that was chosen.</param>
/// <param name="Saved">The difference; below 0 where finishBy or peakBetween make it dearer.</param>
/// <param name="Percent">The difference in per cent of the cost at once.</param>
/// <param name="PerKilowattHourAtOnce">Mean price of the kWh when it starts at the earliest.</param>
/// <param name="PerKilowattHour">Mean price of the kWh with the start that was chosen.</param>
/// <param name="Currency">ISO 4217 code.</param>
/// <param name="Message">The same in words.</param>
public sealed record StartSaving(
    double? AmountAtOnce,
    double? Amount,
    double? Saved,
    double Percent,
    double PerKilowattHourAtOnce,
    double PerKilowattHour,
    string Currency,
    Message Message);
