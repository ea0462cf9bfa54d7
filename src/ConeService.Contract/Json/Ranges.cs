namespace ConeService.Contract.Json;

/// <summary>A range of cones.</summary>
/// <param name="Min">The coolest; null where none is stated.</param>
/// <param name="Best">The best of them; null where none is stated.</param>
/// <param name="Max">The hottest; null where none is stated.</param>
public sealed record ConeRange(string? Min, string? Best, string? Max);

/// <summary>A range of numbers; the unit stands in the name of its owner.</summary>
/// <param name="Min">The least; null where none is stated.</param>
/// <param name="Max">The most; null where none is stated.</param>
public sealed record NumberRange(decimal? Min, decimal? Max);
