namespace ConeService.Contract.Materials;

/// <summary>Two ends of a range of cones.</summary>
/// <param name="Min">Lowest.</param>
/// <param name="Max">Highest.</param>
public sealed record ConeSpan(string Min, string Max);

/// <summary>A range of cones with the best of them.</summary>
/// <param name="Min">Lowest.</param>
/// <param name="Best">Best; null where the body decides.</param>
/// <param name="Max">Highest; null where the body decides.</param>
public sealed record MatureSpan(string Min, string? Best, string? Max);
