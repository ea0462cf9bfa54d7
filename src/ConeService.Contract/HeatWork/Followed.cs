namespace ConeService.Contract.HeatWork;

/// <summary>An answer of heat work with the curve it speaks of, for figures.</summary>
/// <typeparam name="T">The answer.</typeparam>
/// <param name="Answer">The answer.</param>
/// <param name="Curve">Makes the curve; asked for only where a figure is drawn. Null where there is nothing to draw.</param>
public sealed record Followed<T>(T Answer, Func<FiringCurve>? Curve);
