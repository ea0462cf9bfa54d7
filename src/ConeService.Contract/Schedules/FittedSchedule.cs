using ConeService.Contract.HeatWork;

namespace ConeService.Contract.Schedules;

/// <summary>A fit with the curves it speaks of, for figures.</summary>
/// <param name="Answer">The fit.</param>
/// <param name="Curve">The firing from the start until it may be opened: of the kiln where it was modelled, else of the programme with a
/// guessed cooling.</param>
/// <param name="Programme">What the controller asks for, without the cooling.</param>
public sealed record FittedSchedule(ScheduleFit Answer, FiringCurve Curve, FiringCurve Programme);
