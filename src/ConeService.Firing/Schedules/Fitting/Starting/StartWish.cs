using NodaTime;

namespace ConeService.Firing.Schedules.Fitting.Starting;

/// <summary>What chooses the start of a firing, or prices it by the clock.</summary>
/// <param name="IsFixed">True when the start was sent: only the price is still to be told.</param>
/// <param name="NotBefore">The earliest start; the start itself where it was sent.</param>
/// <param name="FinishBy">When the programme shall have ended.</param>
/// <param name="Peak">Between which moments the peak shall come.</param>
/// <param name="Tariff">What a kWh costs at which hours; null where it always costs the same.</param>
/// <param name="Zone">The zone whose clock is meant.</param>
internal sealed record StartWish(
    bool IsFixed,
    DateTimeOffset NotBefore,
    DateTimeOffset? FinishBy,
    (DateTimeOffset From, DateTimeOffset To)? Peak,
    TariffClock? Tariff,
    DateTimeZone Zone);
