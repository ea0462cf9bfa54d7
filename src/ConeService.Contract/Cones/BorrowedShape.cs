
namespace ConeService.Contract.Cones;

/// <summary>Whose curve a value borrows: a chart that prints too little of a cone takes the shape of another chart's.</summary>
/// <param name="Chart">The chart that lends it.</param>
/// <param name="Source">Id of the source of that chart.</param>
public sealed record BorrowedShape(string Chart, string Source);
